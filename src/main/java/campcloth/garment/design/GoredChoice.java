package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Design;

/**
 * The options of a gored skirt, read.
 *
 * @param gores how many
 * @param sweepCm round the hem
 * @param drawstring casing and cord instead of band and placket
 * @param placketCm length of the placket, 0 with a cord
 * @param bandCm finished width of the waistband
 */
record GoredChoice(
        int gores, double sweepCm, boolean drawstring, double placketCm, double bandCm, double seamCm, double hemCm) {

    static GoredChoice of(Chosen chosen, SkirtSizes sizes) {
        double sweepCm = chosen.cm(GoredSkirt.SWEEP.key());
        if (sweepCm < sizes.hipCm()) {
            throw Refused.of(
                    GoredSkirt.SWEEP.key(),
                    "is " + Words.exact(sweepCm) + ", less than round the hip with its ease",
                    "give at least " + Words.number(Math.ceil(sizes.hipCm())) + " cm");
        }
        boolean drawstring = chosen.yes(GoredSkirt.DRAWSTRING.key());
        double placketCm = drawstring ? 0 : chosen.cm(GoredSkirt.PLACKET.key());
        if (placketCm >= sizes.lengthCm()) {
            throw Refused.of(GoredSkirt.PLACKET.key(), "reaches the hem", "give a shorter placket");
        }
        return new GoredChoice(
                chosen.count(GoredSkirt.GORES.key()),
                sweepCm,
                drawstring,
                placketCm,
                chosen.cm(GoredSkirt.BAND.key()),
                chosen.cm(Design.SEAM_ALLOWANCE),
                chosen.cm(Design.HEM_ALLOWANCE));
    }

    /** Circumference at the waist as sewn to the band, or before the cord is drawn. */
    double topCm(SkirtSizes sizes) {
        return drawstring ? sizes.hipCm() : sizes.waistCm();
    }
}
