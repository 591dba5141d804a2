package campcloth.comfort.model;

/**
 * Sun and fire as they warm the body, absorbed W per m2 of the surface that radiates, and the mean radiant temperature that
 * does the same: tr = ((tr0 + 273.15)^4 + flux / sigma)^(1/4) - 273.15.
 *
 * <p>Sun: ASHRAE 55 appendix C, E = f_eff (0.5 f_svv (I_diff + I_refl) + f_p f_bes I_dir) tau, with I_refl = (I_dir sin beta +
 * I_diff) rho and I_diff = 0.2 I_dir; the field ERF = E alpha / 0.95.
 *
 * <p>Fire: point source, q = 0.3 Q / (4 pi r^2) (radiated share 0.3, NUREG-1805), on a body that faces it: f_p 0.29 seated,
 * 0.35 standing. Good beyond about two diameters of the flame, without wind. One temperature hides that the front is hot and
 * the back cold.
 */
public final class RadiantField {

    private static final double STEFAN_BOLTZMANN = 5.67e-8;
    private static final double EMITTANCE = 0.95;
    private static final double DIFFUSE_SHARE = 0.2;
    private static final double RADIATED_SHARE = 0.3;

    /** Projected area factor of a body that faces the sun at 0, 15, .. 90 degrees of altitude. */
    private static final double[] SEATED_FP = {0.29, 0.324, 0.305, 0.303, 0.262, 0.224, 0.177};

    private static final double[] STANDING_FP = {0.35, 0.35, 0.314, 0.258, 0.206, 0.144, 0.082};
    private static final double ALTITUDE_STEP = 15;

    private RadiantField() {}

    /**
     * A sun, and how it reaches the body.
     *
     * @param directWm2 direct beam I_dir
     * @param altitudeDegrees altitude beta
     * @param transmittance tau, 1 outdoors
     * @param skyShare share of the sky that is seen, f_svv
     * @param sunlitShare share of the body that is not shaded, f_bes
     * @param groundReflectance rho
     * @param absorptance alpha of the clothing
     */
    public record Sun(
            double directWm2,
            double altitudeDegrees,
            double transmittance,
            double skyShare,
            double sunlitShare,
            double groundReflectance,
            double absorptance) {}

    /** Effective radiant field of the sun, W per m2 of the whole body. */
    public static double effectiveFieldWm2(Sun sun, boolean seated) {
        return radiatingShare(seated) * sunFluxWm2(sun, seated);
    }

    public static double sunFluxWm2(Sun sun, boolean seated) {
        double diffuse = DIFFUSE_SHARE * sun.directWm2;
        double reflected =
                (sun.directWm2 * Math.sin(Math.toRadians(sun.altitudeDegrees)) + diffuse) * sun.groundReflectance;
        double incoming = 0.5 * sun.skyShare * (diffuse + reflected)
                + projected(sun.altitudeDegrees, seated) * sun.sunlitShare * sun.directWm2;
        return incoming * sun.transmittance * sun.absorptance / EMITTANCE;
    }

    public static double fireFluxWm2(double fireKw, double distanceM, double mostWm2, boolean seated) {
        double arriving = RADIATED_SHARE * fireKw * 1000 / (4 * Math.PI * distanceM * distanceM);
        return projected(0, seated) * Math.min(mostWm2, arriving);
    }

    public static double radiantC(double surroundingsC, double fluxWm2) {
        return Math.pow(Math.pow(surroundingsC + 273.15, 4) + fluxWm2 / STEFAN_BOLTZMANN, 0.25) - 273.15;
    }

    /** Share of the body that exchanges radiation with its surroundings, f_eff. */
    private static double radiatingShare(boolean seated) {
        return seated ? 0.696 : 0.725;
    }

    private static double projected(double altitudeDegrees, boolean seated) {
        double[] factors = seated ? SEATED_FP : STANDING_FP;
        double place = altitudeDegrees / ALTITUDE_STEP;
        int below = Math.min(factors.length - 2, (int) place);
        return factors[below] + (place - below) * (factors[below + 1] - factors[below]);
    }
}
