package campcloth.garment.design;

import campcloth.garment.GarmentPiece;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;

/** Bands, ties and straps: strips along the grain, folded lengthwise, so that they are cut twice as wide as they are sewn. */
final class Band {

    private static final double SEAM_CM = 1;

    private Band() {}

    /**
     * A strip.
     *
     * @param lengthCm finished length, ends without their allowance
     * @param widthCm finished width
     */
    static GarmentPiece of(String name, int count, double lengthCm, double widthCm, SewnCloth cloth) {
        Outline outline =
                Outline.rectangle(cloth.acrossCm(2 * widthCm) + 2 * SEAM_CM, cloth.alongCm(lengthCm) + 2 * SEAM_CM);
        return new GarmentPiece(name, outline, count, false, true);
    }
}
