package campcloth.garment;

import campcloth.figure.Words;

/**
 * The length that people reckon with before any layout: the finished length once for each row of body panels that the
 * cloth's width makes necessary, plus one sleeve. Common practice, no source: twice the length plus a sleeve; once where
 * front and back lie side by side, as on cloth about 140 cm wide up to a finished circumference of about 130 cm. It leaves
 * out seams, hems and shrinkage.
 *
 * @param panels body panels of one garment
 * @param panelWidthCm width of each where it is widest, flare and allowances included
 * @param lengthCm finished length
 * @param sleeveLengthCm finished sleeve
 * @param roundCm finished circumference without flare
 */
public record LengthRule(int panels, double panelWidthCm, double lengthCm, double sleeveLengthCm, double roundCm) {

    private static final double TOUCH_CM = 1e-6;

    /** Rows of panels on cloth of the usable width given; as many as panels where the cloth is too narrow for one. */
    public int rows(double usableWidthCm) {
        int abreast = Math.max(1, (int) Math.floor((usableWidthCm + TOUCH_CM) / panelWidthCm));
        return (panels + abreast - 1) / abreast;
    }

    /** How much wider the cloth would have to be for one more panel abreast. */
    public double shortOfOneMoreCm(double usableWidthCm) {
        int abreast = (int) Math.floor((usableWidthCm + TOUCH_CM) / panelWidthCm);
        return (abreast + 1) * panelWidthCm - usableWidthCm;
    }

    /** Length by the rule for one garment, not rounded. */
    public double lengthOnCm(double usableWidthCm) {
        return rows(usableWidthCm) * lengthCm + sleeveLengthCm;
    }

    /** Which rule it was: {@code 2 x 95 + 53 cm}. */
    public String words(double usableWidthCm) {
        return rows(usableWidthCm) + " x " + Words.number(lengthCm) + " + " + Words.number(sleeveLengthCm) + " cm";
    }
}
