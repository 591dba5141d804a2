package campcloth.comfort.model;

/**
 * What the skin of the two-node body gives off as vapour: sweat, and the moisture that passes through dry skin.
 *
 * @param wm2 heat lost by it
 * @param sweatGM2H sweat that evaporates, g/(m2 h)
 * @param wettedness share of the skin that is wet
 * @param asked share that the sweating asks for
 */
record Evaporation(double wm2, double sweatGM2H, double wettedness, double asked) {

    /** Heat that evaporating sweat takes, W h/g. */
    static final double WH_PER_GRAM = 0.68;

    /** Share of E_max that passes through dry skin. */
    private static final double DIFFUSION = 0.06;

    /**
     * As Gagge, Fobelets and Berglund 1986 share it out.
     *
     * @param sweatCallGM2H sweat that is called for
     * @param mostWm2 loss from a skin that is wet all over, E_max
     * @param wettest greatest share that can be wet, w_max
     */
    static Evaporation of(double sweatCallGM2H, double mostWm2, double wettest) {
        if (mostWm2 <= 0) {
            return new Evaporation(0, 0, wettest, wettest);
        }
        double sweat = WH_PER_GRAM * sweatCallGM2H;
        double asked = DIFFUSION + (1 - DIFFUSION) * sweat / mostWm2;
        if (asked <= wettest) {
            return new Evaporation(asked * mostWm2, sweatCallGM2H, asked, asked);
        }
        return new Evaporation(
                dripping(wettest) * mostWm2, sweatingShare(wettest) * mostWm2 / WH_PER_GRAM, wettest, asked);
    }

    /** Sweat that the warmth of body and skin calls for, of a body that is neutral at that mean temperature. */
    static double sweatCallGM2H(double skinShare, double skinC, double coreC, double neutralBodyC) {
        double warmBody = TwoNode.bodyC(skinShare, skinC, coreC) - neutralBodyC;
        if (warmBody <= 0) {
            return 0;
        }
        double warmSkin = Math.max(0, skinC - TwoNode.NEUTRAL_SKIN_C);
        return 170 * warmBody * Math.exp(warmSkin / 10.7);
    }

    /** Share of E_max that evaporates where sweat drips off. */
    static double dripping(double wettest) {
        double sweating = sweatingShare(wettest);
        return sweating + DIFFUSION * (1 - sweating);
    }

    private static double sweatingShare(double wettest) {
        return wettest / (1 - DIFFUSION);
    }
}
