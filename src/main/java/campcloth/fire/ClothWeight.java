package campcloth.fire;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.fibre.Blend;
import campcloth.fibre.FibreFamily;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import campcloth.fire.model.Spread;

/**
 * Mass of a cloth as given, and as little as a piece of it may weigh, g/m2. Where a piece may weigh less than nine tenths of
 * what was given, the mass is not well known and the low end is graded; a narrower interval is the usual tolerance of cloth and
 * the mass as given is graded (project choice).
 *
 * @param givenGsm mass as given or estimated, g/m2
 * @param lowGsm low end of what it may be, g/m2
 */
public record ClothWeight(double givenGsm, double lowGsm) {

    private static final double USUAL_TOLERANCE = 0.9;
    private static final double ROUNDING = 1e-9;
    private static final Range WEIGHT = Property.WEIGHT_GSM.range();

    public ClothWeight {
        WEIGHT.check(givenGsm);
        WEIGHT.check(lowGsm);
    }

    /** Of a completed cloth. Where nobody weighed it nor told its fibres, it may be as light as any cloth. */
    static ClothWeight of(Cloth completed) {
        Figure weightGsm = completed.required(Property.WEIGHT_GSM);
        return of(weightGsm.value(), weightGsm.low(), weightGsm.basis() == Basis.ESTIMATED, completed.blend());
    }

    /** The same in numbers. */
    public static ClothWeight of(double givenGsm, double lowGsm, boolean isEstimated, Blend blend) {
        boolean nothingKnown = isEstimated && blend.percentOf(FibreFamily.UNNAMED) > 0;
        return new ClothWeight(givenGsm, nothingKnown ? WEIGHT.least() : lowGsm);
    }

    public static ClothWeight exactly(double weightGsm) {
        return new ClothWeight(weightGsm, weightGsm);
    }

    /** The masses at which the grading leaps, g/m2. */
    public static double[] leaps() {
        return new double[] {Spread.GAUZE_GSM, Spread.LIGHT_GSM, Spread.HEAVY_GSM};
    }

    /** Whether a piece weighs what was given but for the usual tolerance. */
    public boolean isWellKnown() {
        return lowGsm >= USUAL_TOLERANCE * givenGsm - ROUNDING;
    }

    /** Mass to grade by, g/m2. */
    public double gradedGsm() {
        return isWellKnown() ? givenGsm : lowGsm;
    }
}
