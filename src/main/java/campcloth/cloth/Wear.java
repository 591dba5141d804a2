package campcloth.cloth;

import campcloth.figure.Range;

/**
 * How a cloth is worn in a garment: all that the sciences need to know of the garment.
 *
 * @param nextToSkin whether it touches the skin
 * @param layer where it lies
 * @param fit how it hangs
 * @param stretchAllowed whether the design can be made of stretch cloth
 * @param coveredPercent share of the body's surface that the garment covers
 * @param clothAreaM2 cloth in the finished garment, m2
 */
public record Wear(
        boolean nextToSkin, Layer layer, Fit fit, boolean stretchAllowed, double coveredPercent, double clothAreaM2) {

    private static final Range COVERED = new Range("coveredPercent", 0, 100, "%");
    private static final Range AREA = new Range("clothAreaM2", 0, 30, "m2");

    public Wear {
        COVERED.check(coveredPercent);
        AREA.check(clothAreaM2);
    }
}
