package campcloth.comfort;

/**
 * Insulation of one garment from the body it covers and the thickness of its cloth: I_clu = 0.0043 A + 0.0014 H A clo, A percent
 * of the body covered, H in mm (McCullough, Jones and Huck 1985, from memory; it meets the garment lists to about 0.03 clo).
 * Fitted up to 3 mm: thicker cloth is credited with 3 mm.
 */
final class GarmentRegression {

    private static final double THICKEST_FITTED_MM = 3;

    private GarmentRegression() {}

    /** I_clu, clo. */
    static double clo(double coveredPercent, double thicknessMm) {
        return coveredPercent * (0.0043 + 0.0014 * fitted(thicknessMm));
    }

    /** The thickness that is credited, mm. */
    static double fitted(double thicknessMm) {
        return Math.min(THICKEST_FITTED_MM, thicknessMm);
    }

    static boolean isBeyond(double thicknessMm) {
        return thicknessMm > THICKEST_FITTED_MM;
    }
}
