package campcloth.fibre;

import java.util.List;

/** What came of reading a fibre-content label: a composition, or the place where it could not be read and why. */
public sealed interface LabelReading permits LabelReading.Read, LabelReading.NotRead {

    /** Name of the part where the label names none. */
    String WHOLE = "whole";

    /**
     * Read from end to end.
     *
     * @param parts the parts in the order of the label, at least one
     * @param notes what a reader should know beside the shares
     */
    record Read(List<Part> parts, List<String> notes) implements LabelReading {

        public Read {
            parts = List.copyOf(parts);
            notes = List.copyOf(notes);
        }
    }

    /**
     * A part of the garment and what it is made of.
     *
     * @param part name of the part ({@code lining}), or {@code whole}
     * @param blend its fibres in percent of mass
     */
    record Part(String part, Blend blend) {}

    /**
     * Not read, because any reading would be a guess.
     *
     * @param because what is wrong
     * @param from first character at fault, counted from 0
     * @param to character after the last one at fault
     * @param place the characters at fault, shortened and with invisible ones written out
     * @param remedy what would make the label readable
     * @param readings what it might mean, where that is known
     */
    record NotRead(String because, int from, int to, String place, String remedy, List<String> readings)
            implements LabelReading {

        public NotRead {
            readings = List.copyOf(readings);
        }
    }
}
