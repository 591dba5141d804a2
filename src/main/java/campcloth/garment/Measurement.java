package campcloth.garment;

import campcloth.figure.Range;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A measurement that a design needs.
 *
 * @param range its key ({@link Range#field()}, unit in the name) and the values that are plausible on people
 * @param tape where the tape lies
 * @param howTaken how to take it
 * @param usualCm what is taken where it is not given; empty where it follows from others or must be given
 */
public record Measurement(Range range, TapeLine tape, String howTaken, OptionalDouble usualCm) {

    /** One that may be left out, in cm. */
    public static Measurement usual(
            TapeLine tape, String key, double leastCm, double mostCm, double usualCm, String howTaken) {
        return new Measurement(new Range(key, leastCm, mostCm, "cm"), tape, howTaken, OptionalDouble.of(usualCm));
    }

    /** One that has no usual value, in cm. */
    public static Measurement needed(TapeLine tape, String key, double leastCm, double mostCm, String howTaken) {
        return new Measurement(new Range(key, leastCm, mostCm, "cm"), tape, howTaken, OptionalDouble.empty());
    }

    public String key() {
        return range.field();
    }

    /** What is measured, as it stands within a sentence. */
    public String words() {
        return tape.title().substring(0, 1).toLowerCase(Locale.ROOT)
                + tape.title().substring(1);
    }

    /** How a note begins that says what was taken for it. */
    public String notMeasured() {
        return tape.title() + ": not measured, ";
    }
}
