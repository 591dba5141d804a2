package campcloth.comfort.model;

/**
 * Moist air about a small instrument, at sea level, as Liljegren et al. 2008 calculate it (J. Occup. Environ. Hyg. 5, 645-655;
 * equations read in open programs that carry the authors' constants). Temperatures in kelvin, pressure in hPa.
 */
final class Instrument {

    static final double KELVIN = 273.15;
    static final double STEFAN_BOLTZMANN = 5.6696e-8;
    static final double PRESSURE_HPA = 1013.25;

    private static final double HEAT_CAPACITY = 1003.5;
    private static final double AIR_MOLAR = 28.97;
    private static final double WATER_MOLAR = 18.015;
    private static final double GAS_CONSTANT = 8314.34 / AIR_MOLAR;
    private static final double PRANDTL = HEAT_CAPACITY / (HEAT_CAPACITY + 1.25 * GAS_CONSTANT);

    /** Below this no anemometer turns: calmer air is calculated with it. */
    private static final double CALMEST_MS = 0.13;

    private Instrument() {}

    /** Vapour pressure over water, hPa (Buck, with the correction for moist air). */
    static double saturationHpa(double kelvin) {
        return 1.004 * 6.1121 * Math.exp(17.502 * (kelvin - KELVIN) / (kelvin - 32.18));
    }

    /** Convection at a sphere, W/(m2 K). */
    static double atSphere(double diameterM, double filmK, double speedMs) {
        double nusselt = 2 + 0.6 * Math.sqrt(reynolds(diameterM, filmK, speedMs)) * Math.pow(PRANDTL, 0.3333);
        return nusselt * conductivity(filmK) / diameterM;
    }

    /** Convection at a cylinder across the wind, W/(m2 K) (Bedingfield and Drew). */
    static double atCylinder(double diameterM, double filmK, double speedMs) {
        double nusselt = 0.281 * Math.pow(reynolds(diameterM, filmK, speedMs), 0.6) * Math.pow(PRANDTL, 0.44);
        return nusselt * conductivity(filmK) / diameterM;
    }

    /** By how many K evaporation cools a wet surface, for each hPa of vapour pressure there above the air's. */
    static double evaporativeK(double filmK, double wickHpa) {
        double latent = (313.15 - filmK) / 30 * -71100 + 2.4073e6;
        double schmidt = viscosity(filmK) / (density(filmK) * diffusivity(filmK));
        return latent
                * WATER_MOLAR
                / (HEAT_CAPACITY * AIR_MOLAR)
                * Math.pow(PRANDTL / schmidt, 0.56)
                / (PRESSURE_HPA - wickHpa);
    }

    private static double reynolds(double diameterM, double kelvin, double speedMs) {
        return Math.max(CALMEST_MS, speedMs) * density(kelvin) * diameterM / viscosity(kelvin);
    }

    private static double density(double kelvin) {
        return PRESSURE_HPA * 100 / (GAS_CONSTANT * kelvin);
    }

    private static double viscosity(double kelvin) {
        double omega = (kelvin / 97 - 2.9) / 0.4 * -0.034 + 1.048;
        return 2.6693e-6 * Math.sqrt(AIR_MOLAR * kelvin) / (3.617 * 3.617 * omega);
    }

    private static double conductivity(double kelvin) {
        return (HEAT_CAPACITY + 1.25 * GAS_CONSTANT) * viscosity(kelvin);
    }

    /** Of water vapour in air at sea level, m2/s. */
    private static double diffusivity(double kelvin) {
        double critical = 132 * 647.3;
        return 3.640e-8
                * Math.pow(kelvin / Math.sqrt(critical), 2.334)
                * Math.cbrt(36.4 * 218)
                * Math.pow(critical, 5.0 / 12)
                * Math.sqrt(1 / AIR_MOLAR + 1 / WATER_MOLAR);
    }
}
