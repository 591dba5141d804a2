package campcloth.garment;

/**
 * Thread that stitches by hand take, in lengths of thread a length of seam, from their geometry; stitches of the sizes given
 * are common practice, no source. With T the thickness passed and s the length of a stitch: a backstitch lies once above and
 * twice below, {@code 3 + 2 T / s}; a slanted stitch w wide over an edge runs the diagonal on both faces,
 * {@code 2 sqrt(w^2 + s^2) / s + 2 T / s}.
 */
final class HandStitch {

    private static final double BACKSTITCH_MM = 2.5;
    private static final double SLANTED_MM = 4;
    private static final double OVERCAST_WIDE_MM = 5;
    private static final double HEMMING_WIDE_MM = 3;

    private HandStitch() {}

    static double backstitch(double thicknessMm) {
        return 3 + 2 * thicknessMm / BACKSTITCH_MM;
    }

    /** Over a raw edge, so that it does not fray. */
    static double overcast(double thicknessMm) {
        return slanted(OVERCAST_WIDE_MM, thicknessMm);
    }

    /** Along a fold, to hold a hem. */
    static double hemming(double thicknessMm) {
        return slanted(HEMMING_WIDE_MM, thicknessMm);
    }

    private static double slanted(double wideMm, double thicknessMm) {
        return 2 * (Math.hypot(wideMm, SLANTED_MM) + thicknessMm) / SLANTED_MM;
    }
}
