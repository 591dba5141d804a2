package campcloth.comfort.model;

import campcloth.comfort.Reading;
import campcloth.comfort.Reading.OutOfRange;
import campcloth.figure.Range;
import java.util.Optional;

/**
 * Predicted mean vote of a large group on the scale from -3 (cold) over 0 (neutral) to +3 (hot), and the predicted percentage
 * dissatisfied: ISO 7730:2005, clause 4 and annex D; external work is 0. Valid for air 10..30, radiant 10..40 degrees Celsius,
 * air speed 0..1 m/s, 0.8..4 met, 0..2 clo, vapour 0..2700 Pa and a vote of -2..2; outside there is no vote. Made for rooms in
 * a steady state: outdoors it is a check on mild, calm spells and no more. The surface temperature of the clothing is found by
 * bisection instead of the standard's iteration.
 */
public final class Pmv {

    private static final String MODEL = "PMV, ISO 7730:2005";
    private static final double WM2_PER_MET = 58.15;
    private static final Range AIR = new Range("air temperature", 10, 30, "degrees Celsius");
    private static final Range RADIANT = new Range("mean radiant temperature", 10, 40, "degrees Celsius");
    private static final Range SPEED = new Range("air speed", 0, 1, "m/s");
    private static final Range MET = new Range("metabolic rate", 0.8, 4, "met");
    private static final Range CLO = new Range("clothing insulation", 0, 2, "clo");
    private static final Range VAPOUR = new Range("vapour pressure", 0, 2700, "Pa");
    private static final Range VOTE = new Range("predicted mean vote", -2, 2, "");

    private Pmv() {}

    public static Reading vote(Air air, double met, double clo) {
        double vapourPa = vapourPa(air);
        Optional<OutOfRange> outside = Limit.firstPassed(
                MODEL,
                new Limit(AIR, air.airC()),
                new Limit(RADIANT, air.radiantC()),
                new Limit(SPEED, air.speedMs()),
                new Limit(MET, met),
                new Limit(CLO, clo),
                new Limit(VAPOUR, vapourPa));
        if (outside.isPresent()) {
            return outside.get();
        }
        double vote = equation(air, vapourPa, met * WM2_PER_MET, clo * Worn.M2KW_PER_CLO);
        return Limit.firstPassed(MODEL, new Limit(VOTE, vote))
                .<Reading>map(passed -> passed)
                .orElseGet(() -> Reading.exact(vote));
    }

    /** Percent of people who would be dissatisfied, PPD. */
    public static double dissatisfiedPercent(double vote) {
        return 100 - 95 * Math.exp(-0.03353 * Math.pow(vote, 4) - 0.2179 * vote * vote);
    }

    private static double equation(Air air, double pa, double m, double icl) {
        double fcl = icl <= 0.078 ? 1.00 + 1.290 * icl : 1.05 + 0.645 * icl;
        double tcl = Root.ofRising(
                t -> t - 35.7 + 0.028 * m + icl * (radiation(t, air, fcl) + convection(t, air, fcl)), -100, 150, 1e-9);
        double skinDiffusion = 3.05e-3 * (5733 - 6.99 * m - pa);
        double sweat = Math.max(0, 0.42 * (m - WM2_PER_MET));
        double latentBreath = 1.7e-5 * m * (5867 - pa);
        double dryBreath = 0.0014 * m * (34 - air.airC());
        double load = m
                - skinDiffusion
                - sweat
                - latentBreath
                - dryBreath
                - radiation(tcl, air, fcl)
                - convection(tcl, air, fcl);
        return (0.303 * Math.exp(-0.036 * m) + 0.028) * load;
    }

    private static double radiation(double tcl, Air air, double fcl) {
        return 3.96e-8 * fcl * (Math.pow(tcl + 273, 4) - Math.pow(air.radiantC() + 273, 4));
    }

    private static double convection(double tcl, Air air, double fcl) {
        double natural = 2.38 * Math.pow(Math.abs(tcl - air.airC()), 0.25);
        double forced = 12.1 * Math.sqrt(air.speedMs());
        return fcl * Math.max(natural, forced) * (tcl - air.airC());
    }

    /** p_a = RH 10 exp(16.6536 - 4030.183 / (t_a + 235)), Pa (annex D). */
    private static double vapourPa(Air air) {
        return air.humidityPercent() * 10 * Math.exp(16.6536 - 4030.183 / (air.airC() + 235));
    }
}
