package campcloth.garment;

import campcloth.figure.Words;

/**
 * The length that people reckon with before any layout: the finished length once for each row of main panels that the
 * cloth's width makes necessary, plus what the smaller pieces take (a sleeve). Common practice, no source; for a tunic twice
 * the length plus a sleeve, once where front and back lie side by side, as on cloth about 140 cm wide up to a finished
 * circumference of about 130 cm. It leaves out seams, hems and shrinkage.
 *
 * @param panels main panels of one garment
 * @param panelWidthCm width of each where it is widest, flare and allowances included
 * @param lengthCm finished length of a panel
 * @param extraCm length reckoned once on top, such as one sleeve; 0 where there is none
 */
public record LengthRule(int panels, double panelWidthCm, double lengthCm, double extraCm) {

    private static final double TOUCH_CM = 1e-6;

    /** Rows of panels on cloth of the usable width given; as many as panels where the cloth is too narrow for one. */
    public int rows(double usableWidthCm) {
        int abreast = Math.max(1, (int) Math.floor((usableWidthCm + TOUCH_CM) / panelWidthCm));
        return (panels + abreast - 1) / abreast;
    }

    /** Whether a panel lies on cloth of that width at all, so that the rule can be followed. */
    public boolean isFeasibleOn(double usableWidthCm) {
        return panelWidthCm <= usableWidthCm + TOUCH_CM;
    }

    /** How much wider the cloth would have to be for one more panel abreast. */
    public double shortOfOneMoreCm(double usableWidthCm) {
        int abreast = (int) Math.floor((usableWidthCm + TOUCH_CM) / panelWidthCm);
        return (abreast + 1) * panelWidthCm - usableWidthCm;
    }

    /** Length by the rule for one garment, not rounded. */
    public double lengthOnCm(double usableWidthCm) {
        return rows(usableWidthCm) * lengthCm + extraCm;
    }

    /** Which rule it was: {@code 2 x 95 + 53 cm}. */
    public String words(double usableWidthCm) {
        String rows = rows(usableWidthCm) + " x " + Words.number(lengthCm);
        return (extraCm == 0 ? rows : rows + " + " + Words.number(extraCm)) + " cm";
    }
}
