package campcloth.comfort.model;

/**
 * Resistance of clothing to water vapour, m2 kPa/W (ISO 9920:2007, read second-hand).
 *
 * <p>Still: R_e,cl = I_cl / (16.5 i_m) with i_m = 0.38 for ordinary permeable clothing. Where the cloth's own R_et (ISO 11092,
 * m2 Pa/W) is known, its share of the body takes R_et instead of the R_et,0 = 60 R_ct / 0.38 that ordinary cloth of its
 * thickness would have (project choice), never less than half of what 0.45, the best of light clothing, gives.
 *
 * <p>Worn: wind and walking thin it as they thin the insulation, c_E = 0.3 - 0.5 c_T + 1.2 c_T^2 with c_T of
 * {@link ResultantInsulation#factor}; the air layer that is left is taken off, at least a fifth remains (project choice). c_E
 * has its least value near c_T = 0.21 and is held there.
 */
public final class VapourResistance {

    private static final double LEWIS_K_KPA = 16.5;
    private static final double ORDINARY_PERMEABILITY = 0.38;
    private static final double BEST_PERMEABILITY = 0.45;

    /** Conductivity of dry textile with the air in it, W/(m K); from memory. */
    private static final double CONDUCTIVITY_WMK = 0.040;

    /** Resistance of the bare body's air layer to heat, m2 K/W, and its moisture permeability index. */
    private static final double AIR_LAYER_M2KW = 0.109;

    private static final double AIR_PERMEABILITY_INDEX = 0.5;
    private static final double LEAST_SHARE = 0.2;

    private VapourResistance() {}

    /**
     * Standing still in calm air.
     *
     * @param basicM2KW basic insulation of the whole clothing
     * @param beyondOrdinaryM2KpaW what its cloths resist beyond ordinary cloth, {@link #beyondOrdinary} of each layer
     */
    public static double still(double basicM2KW, double beyondOrdinaryM2KpaW) {
        double resistance = basicM2KW / (LEWIS_K_KPA * ORDINARY_PERMEABILITY) + beyondOrdinaryM2KpaW;
        return Math.max(resistance, 0.5 * basicM2KW / (LEWIS_K_KPA * BEST_PERMEABILITY));
    }

    /**
     * What a cloth resists beyond ordinary cloth of its thickness, on the mean of the body, m2 kPa/W; below 0 where it breathes
     * better. Layers lie one over the other, so what they resist adds.
     *
     * @param coveredShare share of the body that the cloth covers
     * @param thicknessMm thickness of the cloth
     * @param retM2PaW its vapour resistance, m2 Pa/W
     */
    public static double beyondOrdinary(double coveredShare, double thicknessMm, double retM2PaW) {
        double ordinaryRet = 60 * (thicknessMm / 1000 / CONDUCTIVITY_WMK) / ORDINARY_PERMEABILITY;
        return coveredShare * (retM2PaW - ordinaryRet) / 1000;
    }

    /** In wind and motion. */
    public static double worn(double stillM2KpaW, double basicM2KW, Motion motion, double permeabilityMmS) {
        double airLayer =
                AIR_LAYER_M2KW / (LEWIS_K_KPA * AIR_PERMEABILITY_INDEX * (1 + 0.28 * basicM2KW / Worn.M2KW_PER_CLO));
        double thinned =
                evaporativeFactor(ResultantInsulation.factor(motion, permeabilityMmS)) * (stillM2KpaW + airLayer);
        return Math.max(thinned - airLayerFactor(motion) * airLayer, LEAST_SHARE * stillM2KpaW);
    }

    private static double evaporativeFactor(double insulationFactor) {
        double ct = Math.max(0.5 / 2.4, Math.min(1, insulationFactor));
        return 0.3 - 0.5 * ct + 1.2 * ct * ct;
    }

    /** c_A of the nude, for 0.15..3.5 m/s and walking up to 1.2 m/s; held at the ends, beyond which it means nothing. */
    private static double airLayerFactor(Motion motion) {
        double v = Math.max(0, Math.min(3.5, motion.speedMs()) - 0.15);
        double w = motion.walkingMs();
        return Math.exp(-0.533 * v + 0.069 * v * v - 0.462 * w + 0.201 * w * w);
    }
}
