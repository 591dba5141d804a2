package campcloth.garment;

import java.util.List;

/**
 * Sewing thread for a garment: each seam in its own stitch, its raw edges neatened with a wide zigzag, each hem in as many
 * rows as it has; by hand each seam in backstitch, its edges overcast, each hem in one row ({@link HandStitch}). The waste of
 * {@link SewnBy} comes on top. A seam is two layers thick, a hem three; stitches compress them to about 70 % (project choice).
 */
public final class SewingThread {

    private static final double COMPRESSED = 0.7;
    private static final double ZIGZAG_WIDTH_MM = 5;
    private static final double ZIGZAG_STITCHES_PER_MM = 1;

    private SewingThread() {}

    /** Thread for one garment sewn by machine, m. */
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
        return cm / 100 * (1 + SewnBy.MACHINE.waste());
    }

    /** Thread for one garment, m. */
    public static double metres(Sewing sewing, SewnCloth cloth, SewnBy by) {
        return switch (by) {
            case MACHINE -> metres(sewing.seams(), sewing.hems(), cloth);
            case HAND -> metresByHand(sewing, cloth);
        };
    }

    private static double metresByHand(Sewing sewing, SewnCloth cloth) {
        double layerMm = COMPRESSED * cloth.thicknessMm();
        double overcast = HandStitch.overcast(layerMm);
        double cm = 0;
        for (Seam seam : sewing.seams()) {
            cm += seam.lengthCm() * (HandStitch.backstitch(2 * layerMm) + seam.neatenedEdges() * overcast);
        }
        for (Hem hem : sewing.hems()) {
            cm += hem.edgeLengthCm() * (HandStitch.hemming(3 * layerMm) + (hem.neatened() ? overcast : 0));
        }
        return cm / 100 * (1 + SewnBy.HAND.waste());
    }
}
