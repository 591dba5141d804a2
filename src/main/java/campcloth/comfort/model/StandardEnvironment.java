package campcloth.comfort.model;

/**
 * The standard environment of SET (ASHRAE 55, normative appendix on SET; Gagge, Fobelets and Berglund 1986): still air of 50 %
 * humidity, radiant temperature equal to the air's, clothing that suits the activity. SET is the temperature there at which the
 * skin, as warm and as wet as it is, would lose as much heat as it does here.
 */
final class StandardEnvironment {

    static final double STILL_AIR_WM2K = 3.0;

    private static final double ORDINARY_PERMEATION = 0.45;

    private StandardEnvironment() {}

    /** Convection that the moving body makes for itself, W/(m2 K). */
    static double ownConvection(double met) {
        return met > 0.85 ? 5.66 * Math.pow(met - 0.85, 0.39) : 0;
    }

    static double temperatureC(double met, Body body) {
        return temperatureC(met, Math.max(STILL_AIR_WM2K, ownConvection(met)), body);
    }

    /** With that convection h_c. */
    static double temperatureC(double met, double hc, Body body) {
        double hr = body.radiativeWm2K();
        double ht = hr + hc;
        double clo = 1.52 / (met + 0.6944) - 0.1835;
        double insulation = Worn.M2KW_PER_CLO * clo;
        double areaFactor = 1 + 0.25 * clo;
        double efficiency = 1 / (1 + insulation * areaFactor * ht); // F_cl,s
        double permeation = ORDINARY_PERMEATION
                * (hc / ht)
                * (1 - efficiency)
                / (hc / ht - ORDINARY_PERMEATION * efficiency); // i_cl,s
        double dry = 1 / (1 / (areaFactor * ht) + insulation); // h_d
        double evaporative =
                1 / (1 / (Worn.LEWIS_K_KPA * areaFactor * hc) + insulation / (Worn.LEWIS_K_KPA * permeation)); // h_e
        double loss = body.dryWm2() + body.evaporationWm2();
        double wet = body.wettedness() * evaporative;
        double skinKpa = Vapour.saturationKpa(body.skinC());
        return Root.ofRising(
                x -> loss - dry * (body.skinC() - x) - wet * (skinKpa - 0.5 * Vapour.saturationKpa(x)),
                -100,
                100,
                1e-6);
    }
}
