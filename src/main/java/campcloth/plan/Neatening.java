package campcloth.plan;

import campcloth.garment.SewnBy;
import campcloth.garment.SewnCloth;

/** How raw edges are kept from fraying. Common practice, no source. */
public final class Neatening {

    private static final String TRIM = "of the seam allowances, trim to 1 cm after fitting.";

    private Neatening() {}

    public static String sentence(SewnCloth cloth, SewnBy by) {
        if (cloth.holdsItsCutEdge()) {
            return "The cut edges of felted cloth hold: nothing is neatened. Trim the seam allowances to 1 cm after"
                    + " fitting.";
        }
        return switch (by) {
            case MACHINE -> "Neaten with a wide zigzag, stitches 1 mm long; " + TRIM;
            case HAND -> "Overcast the raw edges with slanted stitches 4 mm apart; " + TRIM;
        };
    }
}
