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
    private static final double WH_PER_GRAM = 0.68;

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
        double asked = 0.06 + 0.94 * sweat / mostWm2;
        if (asked <= wettest) {
            return new Evaporation(asked * mostWm2, sweatCallGM2H, asked, asked);
        }
        double sweatingShare = wettest / 0.94;
        double evaporating = sweatingShare * mostWm2;
        double diffusion = 0.06 * (1 - sweatingShare) * mostWm2;
        return new Evaporation(evaporating + diffusion, evaporating / WH_PER_GRAM, wettest, asked);
    }
}
