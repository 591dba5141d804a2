package campcloth.garment;

import java.util.List;

/**
 * Sewing thread for a garment: each seam in its own stitch, its raw edges neatened with a wide zigzag, each hem in as many
 * rows as it has; then 15 % waste (common practice, no source: 10 to 15 % in industry, more by hand). A seam is two layers
 * thick, a hem three; stitches compress them to about 70 % (project choice).
 */
public final class SewingThread {

    /** Waste on top of what the stitches take. */
    static final double WASTE = 0.15;

    private static final double COMPRESSED = 0.7;
    private static final double ZIGZAG_WIDTH_MM = 5;
    private static final double ZIGZAG_STITCHES_PER_MM = 1;

    private SewingThread() {}

    /** Thread for one garment, m. */
    public static double metres(List<Seam> seams, List<Hem> hems, SewnCloth cloth) {
        double stitchesPerMm = 1 / Needle.forWeight(cloth.weightGsm()).stitchLengthMm();
        double layerMm = COMPRESSED * cloth.thicknessMm();
        double neateningRatio = Stitch.ZIGZAG_304.threadRatio(layerMm, ZIGZAG_WIDTH_MM, ZIGZAG_STITCHES_PER_MM);
        double cm = 0;
        for (Seam seam : seams) {
            double ratio = seam.stitch().threadRatio(2 * layerMm, 0, stitchesPerMm);
            cm += seam.lengthCm() * (ratio + seam.neatenedEdges() * neateningRatio);
        }
        for (Hem hem : hems) {
            double ratio = hem.rows() * Stitch.LOCK_301.threadRatio(3 * layerMm, 0, stitchesPerMm);
            cm += hem.edgeLengthCm() * (ratio + (hem.neatened() ? neateningRatio : 0));
        }
        return cm / 100 * (1 + WASTE);
    }
}
