package campcloth.fire.model;

import java.util.Optional;

/**
 * How long bare skin stands radiant heat before it hurts, s. Between the rows straight in the logarithms of both, since the time
 * goes as a power of the flux. Source: Handbook of Chemical Hazard Analysis Procedures (FEMA, DOT, EPA, 1989), table 4.2, as
 * quoted in an open course. The same course quotes the relation of the US Department of Defense (DESR 6055.09) for a
 * second-degree burn, {@code t = 200 q^-1.46}, which is shorter throughout.
 *
 * <p>Holds from 1 to 12 kW/m2; empty outside. For adults; a child's skin is thinner. Explains, never grades.
 */
public final class SkinTimes {

    private static final double[] FLUX_KW_M2 = {1, 2, 3, 4, 5, 6, 8, 10, 12};
    private static final double[] PAIN_S = {115, 45, 27, 18, 13, 11, 7, 5, 4};
    private static final double[] SECOND_DEGREE_S = {663, 187, 92, 57, 40, 30, 20, 14, 11};

    private static final double MILITARY_S = 200;
    private static final double MILITARY_POWER = -1.46;

    private SkinTimes() {}

    /** Time to severe pain, s. */
    public static Optional<Double> painS(double fluxKwM2) {
        return between(PAIN_S, fluxKwM2);
    }

    /** Time to a second-degree burn, s. */
    public static Optional<Double> secondDegreeS(double fluxKwM2) {
        return between(SECOND_DEGREE_S, fluxKwM2);
    }

    /** Time to a second-degree burn by the table or by the military relation, whichever is sooner, s. */
    public static Optional<Double> soonestSecondDegreeS(double fluxKwM2) {
        return secondDegreeS(fluxKwM2).map(table -> Math.min(table, MILITARY_S * Math.pow(fluxKwM2, MILITARY_POWER)));
    }

    private static Optional<Double> between(double[] seconds, double fluxKwM2) {
        int last = FLUX_KW_M2.length - 1;
        if (!(fluxKwM2 >= FLUX_KW_M2[0] && fluxKwM2 <= FLUX_KW_M2[last])) {
            return Optional.empty();
        }
        int upper = 1;
        while (fluxKwM2 > FLUX_KW_M2[upper]) {
            upper++;
        }
        double part = Math.log(fluxKwM2 / FLUX_KW_M2[upper - 1]) / Math.log(FLUX_KW_M2[upper] / FLUX_KW_M2[upper - 1]);
        double logSeconds = (1 - part) * Math.log(seconds[upper - 1]) + part * Math.log(seconds[upper]);
        return Optional.of(Math.exp(logSeconds));
    }
}
