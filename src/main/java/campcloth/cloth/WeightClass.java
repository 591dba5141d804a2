package campcloth.cloth;

import campcloth.figure.Figure;
import java.util.Optional;

/**
 * A cloth's mass per area in one word. The bounds are a project choice, near those by which needles are chosen (common practice, no
 * source); trades draw them elsewhere, and no rule of an event is read by them.
 */
public enum WeightClass {
    /** Under 130 g/m2. */
    LIGHT,
    /** From 130 to under 250 g/m2. */
    MEDIUM,
    /** From 250 to under 400 g/m2. */
    HEAVY,
    /** From 400 g/m2. */
    VERY_HEAVY;

    private static final double MEDIUM_FROM_GSM = 130;
    private static final double HEAVY_FROM_GSM = 250;
    private static final double VERY_HEAVY_FROM_GSM = 400;

    public static WeightClass of(double weightGsm) {
        if (weightGsm < MEDIUM_FROM_GSM) {
            return LIGHT;
        }
        if (weightGsm < HEAVY_FROM_GSM) {
            return MEDIUM;
        }
        return weightGsm < VERY_HEAVY_FROM_GSM ? HEAVY : VERY_HEAVY;
    }

    /** Of the figure given; empty where none was: an estimate puts no cloth into a class. */
    public static Optional<WeightClass> of(Cloth cloth) {
        return cloth.figure(Property.WEIGHT_GSM).map(Figure::value).map(WeightClass::of);
    }
}
