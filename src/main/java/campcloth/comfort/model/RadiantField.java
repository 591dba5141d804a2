package campcloth.comfort.model;

/**
 * Sun and fire as they warm the body, absorbed W per m2 of the surface that radiates, and the mean radiant temperature that
 * does the same: tr = ((tr0 + 273.15)^4 + flux / sigma)^(1/4) - 273.15.
 *
 * <p>Sun: ASHRAE 55 appendix C, E = f_eff (0.5 f_svv (I_diff + I_refl) + f_p f_bes I_dir) tau, with I_refl = (I_dir sin beta +
 * I_diff) rho and I_diff = 0.2 I_dir where only the beam is known; the field ERF = E alpha / 0.95.
 *
 * <p>Fire: point source, q = 0.3 Q / (4 pi r^2) (radiated share 0.3, NUREG-1805), on a body that faces it: f_p 0.29 seated,
 * 0.35 standing. Without wind; nearer than about 2.5 widths of the fire (from memory) it is no measure. One temperature hides that the front is hot and
 * the back cold.
 */
public final class RadiantField {

    private static final double STEFAN_BOLTZMANN = 5.67e-8;
    private static final double EMITTANCE = 0.95;
    private static final double DIFFUSE_SHARE = 0.2;
    private static final double RADIATED_SHARE = 0.3;

    private RadiantField() {}

    /**
     * A sun, and how it reaches the body.
     *
     * @param directWm2 direct beam I_dir
     * @param diffuseWm2 light of the sky on level ground I_diff
     * @param altitudeDegrees altitude beta
     * @param transmittance tau, 1 outdoors
     * @param skyShare share of the sky that is seen, f_svv
     * @param sunlitShare share of the body that is not shaded, f_bes
     * @param groundReflectance rho
     * @param absorptance alpha of the clothing
     */
    public record Sun(
            double directWm2,
            double diffuseWm2,
            double altitudeDegrees,
            double transmittance,
            double skyShare,
            double sunlitShare,
            double groundReflectance,
            double absorptance) {

        /** A sun of which only the beam is known. */
        public Sun(
                double directWm2,
                double altitudeDegrees,
                double transmittance,
                double skyShare,
                double sunlitShare,
                double groundReflectance,
                double absorptance) {
            this(
                    directWm2,
                    DIFFUSE_SHARE * directWm2,
                    altitudeDegrees,
                    transmittance,
                    skyShare,
                    sunlitShare,
                    groundReflectance,
                    absorptance);
        }
    }

    /** Effective radiant field of a sun so far off the front of the body, W per m2 of the whole body. */
    public static double effectiveFieldWm2(Sun sun, double sharpDegrees, boolean seated) {
        return radiatingShare(seated) * fluxWm2(sun, ProjectedArea.at(sun.altitudeDegrees, sharpDegrees, seated));
    }

    /** On a body that faces the sun. */
    public static double sunFluxWm2(Sun sun, boolean seated) {
        return fluxWm2(sun, ProjectedArea.facing(sun.altitudeDegrees, seated));
    }

    /** On a body that turns about: the mean over all sides. */
    public static double sunFluxTurningWm2(Sun sun, boolean seated) {
        return fluxWm2(sun, ProjectedArea.turning(sun.altitudeDegrees, seated));
    }

    private static double fluxWm2(Sun sun, double projected) {
        double reflected = (sun.directWm2 * Math.sin(Math.toRadians(sun.altitudeDegrees)) + sun.diffuseWm2)
                * sun.groundReflectance;
        double incoming =
                0.5 * sun.skyShare * (sun.diffuseWm2 + reflected) + projected * sun.sunlitShare * sun.directWm2;
        return incoming * sun.transmittance * sun.absorptance / EMITTANCE;
    }

    public static double fireFluxWm2(double fireKw, double distanceM, double mostWm2, boolean seated) {
        double arriving = RADIATED_SHARE * fireKw * 1000 / (4 * Math.PI * distanceM * distanceM);
        return ProjectedArea.facing(0, seated) * Math.min(mostWm2, arriving);
    }

    public static double radiantC(double surroundingsC, double fluxWm2) {
        return Math.pow(Math.pow(surroundingsC + 273.15, 4) + fluxWm2 / STEFAN_BOLTZMANN, 0.25) - 273.15;
    }

    /** Share of the body that exchanges radiation with its surroundings, f_eff. */
    private static double radiatingShare(boolean seated) {
        return seated ? 0.696 : 0.725;
    }
}
