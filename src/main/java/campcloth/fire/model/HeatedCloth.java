package campcloth.fire.model;

import campcloth.figure.Range;
import java.util.Optional;

/**
 * Thin cloth that warms in steady radiant heat: {@code m c dT/dt = a q - losses}, from the temperature of the surroundings, with the
 * losses of a {@link HeatBalance}.
 *
 * <p>Solved as an integral. With {@code u = -ln((Ts - T) / (Ts - T0))}, Ts the steady temperature, the balance becomes
 * {@code dt = m c du / K(T)} with K smooth and between 15 and 100 W/(m2 K) for one side, since {@code a q - losses = K (Ts - T)}; Gauss's rule of
 * three points in panels of half a unit gives the time to a millionth of itself, and the temperature to a thousandth of a degree.
 *
 * <p>Holds from 0 to 20 kW/m2, 10 to 2000 g/m2, up to a day. The specific heat is that of dry cloth at room temperature: water in
 * the cloth, a rising specific heat and the heat of melting delay the real cloth. An estimate for a steady fire.
 *
 * @param balance what it takes up and loses
 * @param weightGsm mass, g/m2
 * @param specificHeatJGK specific heat, J/(g K)
 */
public record HeatedCloth(HeatBalance balance, double weightGsm, double specificHeatJGK) {

    private static final Range WEIGHT = new Range("weightGsm", 10, 2000, "g/m2");
    private static final Range SPECIFIC_HEAT = new Range("specificHeatJGK", 0.5, 3, "J/(g K)");
    private static final Range SECONDS = new Range("seconds", 0, 86_400, "s");
    private static final Range CLOTH = new Range("clothC", -50, 1000, "degrees Celsius");

    /** Beyond this the cloth is within a millionth of a degree of its steady temperature. */
    private static final double SETTLED = 25;

    private static final double PANEL = 0.5;
    private static final double GAUSS_NODE = Math.sqrt(0.6);
    private static final double MIDDLE_WEIGHT = 8.0 / 18;
    private static final double SIDE_WEIGHT = 5.0 / 18;
    private static final double CLOSE_ENOUGH = 1e-9;

    public HeatedCloth {
        WEIGHT.check(weightGsm);
        SPECIFIC_HEAT.check(specificHeatJGK);
    }

    /** Time until it reaches a temperature, s; empty where it never does at that flux. */
    public Optional<Double> secondsTo(double clothC, double fluxKwM2) {
        double rise = CLOTH.check(clothC) - HeatBalance.SURROUNDINGS_C;
        double steadyC = balance.steadyC(fluxKwM2);
        if (rise <= 0) {
            return Optional.of(0.0);
        }
        if (clothC >= steadyC) {
            return Optional.empty();
        }
        double progress = -Math.log1p(-rise / (steadyC - HeatBalance.SURROUNDINGS_C));
        return progress > SETTLED ? Optional.empty() : Optional.of(heatJM2K() * integral(progress, steadyC));
    }

    /**
     * Temperature after a time, degrees Celsius. Newton's rule on the integral, which curves downwards: from a start that lies too
     * low, it climbs to the answer without overshoot.
     */
    public double temperatureC(double fluxKwM2, double seconds) {
        double steadyC = balance.steadyC(fluxKwM2);
        double wanted = SECONDS.check(seconds) / heatJM2K();
        double progress = wanted * balance.conductanceWM2K(steadyC, HeatBalance.SURROUNDINGS_C);
        double step = progress;
        while (progress < SETTLED && step > CLOSE_ENOUGH * progress) {
            double conductance = balance.conductanceWM2K(steadyC, at(progress, steadyC));
            step = (wanted - integral(progress, steadyC)) * conductance;
            progress += step;
        }
        return progress < SETTLED ? at(progress, steadyC) : steadyC;
    }

    private double heatJM2K() {
        return weightGsm * specificHeatJGK;
    }

    /** The time over the heat taken up per degree, m2 K/W. */
    private double integral(double progress, double steadyC) {
        int panels = (int) Math.ceil(progress / PANEL);
        double width = progress / panels;
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            double middle = (i + 0.5) * width;
            double aside = width / 2 * GAUSS_NODE;
            sum += MIDDLE_WEIGHT * resistance(middle, steadyC)
                    + SIDE_WEIGHT * (resistance(middle - aside, steadyC) + resistance(middle + aside, steadyC));
        }
        return sum * width;
    }

    private double resistance(double progress, double steadyC) {
        return 1 / balance.conductanceWM2K(steadyC, at(progress, steadyC));
    }

    private static double at(double progress, double steadyC) {
        return HeatBalance.SURROUNDINGS_C - (steadyC - HeatBalance.SURROUNDINGS_C) * Math.expm1(-progress);
    }
}
