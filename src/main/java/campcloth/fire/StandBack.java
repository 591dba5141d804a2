package campcloth.fire;

import campcloth.figure.Words;
import campcloth.fire.model.HeatBalance;
import campcloth.fire.model.Melt;
import campcloth.fire.model.PointSource;
import campcloth.fire.model.Spread;
import java.util.Optional;

/**
 * The distance to keep from a fire, the greatest of five: where a steady fire sends no more than 1.6 kW/m2 (about the limit for a
 * long stay), where steady heat leaves the cloth 20 degrees below where its first part softens, the ring of 1 m, the near field of
 * {@link PointSource}, and for cloth that sparks melt or set alight the {@value #SPARKS_M} m within which they land often. The
 * fire is counted as radiating 0.40 of its heat. An estimate: gusts, flare-ups and flying embers are worse.
 *
 * @param metres from the fire's centre, m
 * @param limit which of the five is greatest
 * @param because the same in words, with the margin that is in it
 */
public record StandBack(double metres, Limit limit, String because) {

    /** What can set the distance. */
    public enum Limit {
        RING,
        NEAR_FIELD,
        LONG_STAY,
        SOFTENING,
        SPARKS
    }

    /** Sparks land often within some metres of a camp fire (from memory); as far off as who only passes by. Project choice. */
    static final double SPARKS_M = 3;

    /** Flux that ordinary clothing bears for long, kW/m2: about 1.5 by a 2016 report on heat radiation contours. */
    private static final double LONG_STAY_KW_M2 = 1.6;

    private static final double ROUNDING = 1e-9;

    /** Kept below softening: project choice. */
    private static final double MARGIN_K = 20;

    private static final String STRONG = "the fire is counted as radiating "
            + Words.number(PointSource.GRADING_FRACTION) + " of its heat, where "
            + Words.number(PointSource.NOMINAL_FRACTION) + " is usual.";

    private static final String STEADY = " A gust, a flare-up or an ember reaches farther.";

    /** The distance in full tenths of a metre, never nearer. */
    public double roundedUpM() {
        return upToTenths(metres);
    }

    static double upToTenths(double metres) {
        return Math.ceil(metres * 10 - ROUNDING) / 10;
    }

    static StandBack of(WornCloth cloth, double fireKw) {
        Optional<Softening> softening = Softening.of(cloth);
        StandBack greatest = new StandBack(Exposure.RING_M, Limit.RING, ring());
        greatest = greatest.or(PointSource.nearFieldM(fireKw), Limit.NEAR_FIELD, nearField(fireKw));
        greatest = greatest.or(metres(fireKw, LONG_STAY_KW_M2), Limit.LONG_STAY, longStay());
        if (softening.isPresent()) {
            double bearable = HeatBalance.ONE_SIDE.fluxKwM2(softening.get().clothC() - MARGIN_K);
            greatest = greatest.or(metres(fireKw, bearable), Limit.SOFTENING, softens(softening.get()));
        }
        if (fearsSparks(cloth)) {
            greatest = greatest.or(SPARKS_M, Limit.SPARKS, sparks(cloth, greatest.metres));
        }
        return greatest;
    }

    /** What melts by more than a trace of a label, or can flash and is not nearly all wool. */
    private static boolean fearsSparks(WornCloth cloth) {
        return sparksMelt(cloth) || (cloth.canFlash() && !Spread.isLittleFuel(cloth.fuelPercent()));
    }

    private static boolean sparksMelt(WornCloth cloth) {
        return cloth.meltablePercent() > Melt.TRACE_PERCENT;
    }

    private StandBack or(double other, Limit otherLimit, String otherBecause) {
        return other > metres ? new StandBack(other, otherLimit, otherBecause) : this;
    }

    private static double metres(double fireKw, double fluxKwM2) {
        return PointSource.distanceM(PointSource.GRADING_FRACTION, fireKw, fluxKwM2);
    }

    private static String sparks(WornCloth cloth, double steadyM) {
        return "Nearer than " + Words.number(SPARKS_M) + " m sparks land often (from memory; project choice): "
                + (sparksMelt(cloth) ? "they melt holes through it." : "they catch on its raised face.")
                + " That is its margin over the " + Words.fixed(steadyM, 1)
                + " m that a steady fire alone asks for. A gust or a flare-up reaches farther.";
    }

    private static String ring() {
        return "Nobody but those who work at a fire comes nearer than " + Words.number(Exposure.RING_M)
                + " m; steady heat alone would let the cloth come nearer." + STEADY;
    }

    private static String nearField(double fireKw) {
        return "Nearer than " + PointSource.LEAST_DIAMETERS + " widths of a fire of " + Words.number(fireKw)
                + " kW flames can reach the cloth, and no formula tells how far." + STEADY;
    }

    private static String longStay() {
        return "Farther off a steady fire sends less than " + Words.number(LONG_STAY_KW_M2)
                + " kW/m2, about what ordinary clothing bears for a long stay. Its margin: " + STRONG + STEADY;
    }

    private static String softens(Softening softening) {
        return "Farther off steady heat leaves the cloth " + Words.number(MARGIN_K) + " degrees or more below the "
                + Words.number(softening.clothC()) + " degrees Celsius where its " + softening.part() + " softens."
                + " Its margin: those degrees, and " + STRONG + STEADY;
    }
}
