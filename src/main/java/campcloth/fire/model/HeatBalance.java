package campcloth.fire.model;

import campcloth.figure.Range;

/**
 * What thin cloth in radiant heat takes up and loses: {@code a q = s (h (T - T0) + eps sigma (T^4 - T0^4))} where it is steady,
 * with s sides that lose heat. Every model of warm cloth takes its constants from here.
 *
 * <p>Absorptivity and emissivity 0.9, still-air film 10 W/(m2 K), surroundings 20 degrees Celsius: project choices. Seen: emissivity
 * of nylon 0.87, cotton 0.88, polyester 0.88, acrylic 0.82 at 8 to 12 micrometre (National Institute of Justice, abstract);
 * knitted cloth absorbs 75 to 93 % of mid infrared but 10 to 96 % of near infrared (Bauer, Gresser and Mark 2021, abstract), so 0.9 is
 * high, and cautious, for pale cloth; free convection 5 to 25 W/(m2 K) (course of Carleton University).
 *
 * <p>Holds from 0 to 20 kW/m2. No wind, no flare-up, no ember, no drying, no burning of the cloth itself; one temperature through
 * the cloth.
 */
public final class HeatBalance {

    /** Where heat is lost from the lit side only, something warm lying behind: the worst case. */
    public static final HeatBalance ONE_SIDE = new HeatBalance(1, 0.9, 0.9, 10);

    /** Where the back is as free as the front, as in a hem that hangs clear. */
    public static final HeatBalance BOTH_SIDES = new HeatBalance(2, 0.9, 0.9, 10);

    /** Temperature of cloth and surroundings before the fire, degrees Celsius. */
    static final double SURROUNDINGS_C = 20;

    private static final double STEFAN_BOLTZMANN_W_M2K4 = 5.670374e-8; // CODATA
    private static final double KELVIN = 273.15;
    private static final double CLOSE_ENOUGH_K = 1e-9;
    private static final Range FLUX = new Range("fluxKwM2", 0, 20, "kW/m2");

    private final int sides;
    private final double absorptivity;
    private final double emissivity;
    private final double filmWM2K;

    /** @param filmWM2K film coefficient, W/(m2 K), more than 0 */
    HeatBalance(int sides, double absorptivity, double emissivity, double filmWM2K) {
        this.sides = sides;
        this.absorptivity = absorptivity;
        this.emissivity = emissivity;
        this.filmWM2K = filmWM2K;
    }

    /** Flux that holds the cloth at a temperature, kW/m2; 0 where that is no warmer than the surroundings. */
    public double fluxKwM2(double clothC) {
        return clothC <= SURROUNDINGS_C ? 0 : lossWM2(clothC) / absorptivity / 1000;
    }

    /**
     * Temperature the cloth settles at, degrees Celsius. Newton's rule from above, where convection alone would hold it; the loss
     * curves upwards, so it comes down to the answer without overshoot. To a billionth of a degree.
     */
    public double steadyC(double fluxKwM2) {
        double taken = absorptivity * FLUX.check(fluxKwM2) * 1000;
        double cloth = SURROUNDINGS_C + taken / (sides * filmWM2K);
        double step;
        do {
            step = (lossWM2(cloth) - taken) / slopeWM2K(cloth);
            cloth -= step;
        } while (step > CLOSE_ENOUGH_K);
        return cloth;
    }

    /**
     * Loss at a steady temperature less that at a lower one, per degree between them, W/(m2 K). The difference of fourth powers is
     * divided out, so nothing cancels near the steady state.
     */
    double conductanceWM2K(double steadyC, double clothC) {
        double steady = steadyC + KELVIN;
        double cloth = clothC + KELVIN;
        double radiated = emissivity * STEFAN_BOLTZMANN_W_M2K4 * (steady * steady + cloth * cloth) * (steady + cloth);
        return sides * (filmWM2K + radiated);
    }

    private double lossWM2(double clothC) {
        return conductanceWM2K(clothC, SURROUNDINGS_C) * (clothC - SURROUNDINGS_C);
    }

    private double slopeWM2K(double clothC) {
        return conductanceWM2K(clothC, clothC);
    }
}
