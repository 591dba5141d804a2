package campcloth.comfort.model;

/**
 * Sweat that stays in the clothing and dries out of it later: what the {@link TwoNode} by itself forgets.
 *
 * <p>Left behind: sweat cools with an efficiency of 1 - w^2 / 2 at a wettedness w (ISO 7933, read second-hand), the rest runs off;
 * and so does all that the body sweats beyond the wettest skin there can be. Runs off into the clothing up to 300 g/m2, then
 * drips to the ground (project choice).
 *
 * <p>Dries: clothing that holds 100 g per m2 of the body keeps the whole skin under it wet, less keeps a share of it wet; what
 * evaporates so takes its heat from the skin and leaves through clothing and air as sweat does (project choice; storing sweat
 * beside the two-node model in a wet share of the clothing follows Elson and Eckels 2018, abstract read). Not rain, not the
 * insulation that wet cloth loses, not moisture taken up as vapour.
 */
public final class Moisture {

    /** From here on clothing drips, g per m2 of the body. */
    public static final double MOST_GM2 = 300;

    private static final double ALL_WET_GM2 = 100;

    private Moisture() {}

    /** What runs off into the clothing, g/(m2 h). */
    public static double leftGM2H(Body body) {
        double wet = Math.min(1, body.wettedness());
        double runsOff = body.sweatGM2H() * (1 / (1 - wet * wet / 2) - 1);
        return Math.max(runsOff, body.sweatCallGM2H() - body.sweatGM2H());
    }

    /**
     * What evaporates out of the clothing in the next minute, on top of what the skin gives off itself, W/m2.
     *
     * @param waterGM2 what the clothing holds
     */
    public static double dryingWm2(Body body, double wettest, double waterGM2) {
        double more = Math.min(wettest, waterGM2 / ALL_WET_GM2) - body.wettedness();
        return more <= 0 ? 0 : Math.min(more * mostWm2(body, wettest), 60 * waterGM2 * Evaporation.WH_PER_GRAM);
    }

    /** What that takes out of the clothing in a minute, g/m2. */
    public static double driedGM2(double dryingWm2) {
        return dryingWm2 / Evaporation.WH_PER_GRAM / 60;
    }

    /** E_max, from the evaporation and the wettedness that the model gave. */
    private static double mostWm2(Body body, double wettest) {
        return body.evaporationWm2()
                / (body.wettednessAsked() <= wettest ? body.wettedness() : Evaporation.dripping(wettest));
    }
}
