package campcloth.garment;

import campcloth.figure.Range;
import java.util.OptionalDouble;

/**
 * A measurement that a design needs.
 *
 * @param range its key ({@link Range#field()}, unit in the name) and the values that are plausible on people
 * @param howTaken how to take it
 * @param usualCm what is taken where it is not given; empty where it follows from others or must be given
 */
public record Measurement(Range range, String howTaken, OptionalDouble usualCm) {

    public String key() {
        return range.field();
    }
}
