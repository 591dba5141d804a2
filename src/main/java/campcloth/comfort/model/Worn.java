package campcloth.comfort.model;

/**
 * Clothing as it acts on the body at that moment, wind and walking already in it; the air layer around it is not part of it.
 *
 * @param insulationM2KW intrinsic insulation, m2 K/W
 * @param vapourResistanceM2KpaW intrinsic vapour resistance, m2 kPa/W
 */
public record Worn(double insulationM2KW, double vapourResistanceM2KpaW) {

    public static final double M2KW_PER_CLO = 0.155;

    /** Lewis relation at sea level, K/kPa (2.2 K/mmHg). */
    static final double LEWIS_K_KPA = 2.2 * Vapour.MMHG_PER_KPA;

    /** Vapour permeation of ordinary clothing, i_cl of Gagge, Fobelets and Berglund 1986. */
    private static final double ORDINARY_PERMEATION = 0.45;

    /** Ordinary permeable clothing: R_e,cl = R_cl / (LR 0.45). */
    public static Worn ordinary(double clo) {
        double insulation = clo * M2KW_PER_CLO;
        return new Worn(insulation, insulation / (LEWIS_K_KPA * ORDINARY_PERMEATION));
    }

    public double clo() {
        return insulationM2KW / M2KW_PER_CLO;
    }
}
