package campcloth.cloth;

import campcloth.figure.Refused;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What somebody measured on a piece cut from a cloth; {@link SwatchFigures} says what follows from it. Kept in databases by the
 * names of its components.
 *
 * @param measuredOn day of the measurement
 * @param note what to remember of it, may be empty, at most 500 characters
 * @param conditioned whether the piece had lain in air of 20 degrees Celsius and 65 % humidity, as ISO 139 asks for
 * @param weighed pieces of known area that were weighed
 * @param washed marks before and after washing
 * @param stack a stack of layers under a small weight
 * @param wind air through this cloth beside another
 * @param drip drops of water on the cloth
 */
public record Swatch(
        LocalDate measuredOn,
        String note,
        boolean conditioned,
        Optional<WeighedPieces> weighed,
        Optional<WashedMarks> washed,
        Optional<LayerStack> stack,
        Optional<WindTest> wind,
        Optional<DripTest> drip) {

    private static final int LONGEST_NOTE = 500;
    private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

    public Swatch {
        if (note.length() > LONGEST_NOTE) {
            throw Refused.of(
                    "note", "has " + note.length() + " characters", "keep it to " + LONGEST_NOTE + " characters");
        }
        if (measuredOn.isBefore(EARLIEST)) {
            throw Refused.of("measuredOn", "is " + measuredOn, "give the day of the measurement, such as 2026-11-24");
        }
        if (Stream.of(weighed, washed, stack, wind, drip).allMatch(Optional::isEmpty)) {
            throw Refused.of(
                    "weighed",
                    "is missing, and so is every other measurement",
                    "measure one thing at least (options weighed, washed, stack, wind, drip)");
        }
    }

    /** The day of a measurement, today where none is told; what is later than tomorrow, as it is somewhere, is refused. */
    public static LocalDate day(Optional<LocalDate> told, LocalDate today) {
        LocalDate day = told.orElse(today);
        if (day.isAfter(today.plusDays(1))) {
            throw Refused.of("measuredOn", "is " + day + ", which is still to come", "give the day of the measurement");
        }
        return day;
    }
}
