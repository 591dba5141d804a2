package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Design;

/**
 * The options of a hood, read.
 *
 * @param backOnFold one piece instead of two halves
 * @param gores a gore on each shoulder
 * @param slitCm how far the front stays open, 0 where it is closed
 */
record HoodChoice(boolean backOnFold, boolean gores, double slitCm, double seamCm, double hemCm) {

    static HoodChoice of(Chosen chosen, HoodSizes sizes) {
        double slitCm = chosen.cm(Hood.FRONT_SLIT.key());
        double frontCm = HoodCut.THROAT_CM + sizes.capeCm();
        if (slitCm > frontCm) {
            throw Refused.of(
                    Hood.FRONT_SLIT.key(),
                    "is longer than the front seam of " + Words.number(frontCm) + " cm",
                    "give at most " + Words.number(frontCm) + " cm, which opens it to the hem");
        }
        return new HoodChoice(
                chosen.yes(Hood.BACK_ON_FOLD.key()),
                chosen.yes(Hood.GORES.key()),
                slitCm,
                chosen.cm(Design.SEAM_ALLOWANCE),
                chosen.cm(Design.HEM_ALLOWANCE));
    }
}
