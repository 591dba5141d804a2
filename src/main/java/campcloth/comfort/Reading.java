package campcloth.comfort;

import java.util.Optional;

/** What a model says, or that it cannot say anything there: a model is never used outside its range in silence. */
public sealed interface Reading permits Reading.Value, Reading.OutOfRange {

    /**
     * A value with the interval that follows from the intervals of the cloth's figures.
     *
     * @param value best single value
     * @param low lower end, at most {@code value}
     * @param high upper end, at least {@code value}
     */
    record Value(double value, double low, double high) implements Reading {

        public Value {
            if (!(low <= value && value <= high) || !Double.isFinite(low) || !Double.isFinite(high)) {
                throw new IllegalArgumentException(low + ".." + high + " does not contain " + value);
            }
        }

        /** The middle of three runs of a model, with the interval that all three span. */
        public static Value spanning(double value, double oneEnd, double otherEnd) {
            return new Value(
                    value, Math.min(value, Math.min(oneEnd, otherEnd)), Math.max(value, Math.max(oneEnd, otherEnd)));
        }
    }

    /**
     * The model does not hold there.
     *
     * @param model name of the model, with its standard
     * @param because which of its limits is passed
     */
    record OutOfRange(String model, String because) implements Reading {}

    static Value exact(double value) {
        return new Value(value, value, value);
    }

    /** The value, where the model holds. */
    default Optional<Value> inRange() {
        return this instanceof Value value ? Optional.of(value) : Optional.empty();
    }

    /** Why there is no value, where the model does not hold. */
    default Optional<OutOfRange> outOfRange() {
        return this instanceof OutOfRange outside ? Optional.of(outside) : Optional.empty();
    }
}
