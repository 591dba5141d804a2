package campcloth.fire.model;

/**
 * Cloth in steady radiant heat, losing heat from its lit side only (something warm lies behind it: the worst case):
 * {@code a q = h (T - T0) + eps sigma (T^4 - T0^4)}. Energy balance of a thin sheet; absorptivity a and emissivity eps 0.9, still
 * air h = 10 W/(m2 K), surroundings 20 degrees Celsius (all from memory of the fire literature; project choice to use them).
 *
 * <p>An estimate for a steady fire from 0 to 20 kW/m2. No wind, no flare-up, no ember, no burning of the cloth itself.
 */
public final class SteadyCloth {

    private static final double ABSORPTIVITY = 0.9;
    private static final double EMISSIVITY = 0.9;
    private static final double FILM_COEFFICIENT_W_M2K = 10;
    private static final double SURROUNDINGS_C = 20;
    private static final double STEFAN_BOLTZMANN_W_M2K4 = 5.670374e-8; // CODATA
    private static final double KELVIN = 273.15;
    private static final double HOTTEST_C = 1000;

    private SteadyCloth() {}

    /** Flux that holds the cloth at a temperature, kW/m2; 0 where that is no warmer than the surroundings. */
    public static double fluxKwM2(double clothC) {
        if (clothC <= SURROUNDINGS_C) {
            return 0;
        }
        double convected = FILM_COEFFICIENT_W_M2K * (clothC - SURROUNDINGS_C);
        double radiated = EMISSIVITY * STEFAN_BOLTZMANN_W_M2K4 * (fourth(clothC) - fourth(SURROUNDINGS_C));
        return (convected + radiated) / ABSORPTIVITY / 1000;
    }

    /** Temperature the cloth settles at, degrees Celsius; found by halving, to a thousandth of a degree. */
    public static double temperatureC(double fluxKwM2) {
        double low = SURROUNDINGS_C;
        double high = HOTTEST_C;
        while (high - low > 0.001) {
            double middle = (low + high) / 2;
            if (fluxKwM2(middle) < fluxKwM2) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double fourth(double celsius) {
        double kelvin = celsius + KELVIN;
        return kelvin * kelvin * kelvin * kelvin;
    }
}
