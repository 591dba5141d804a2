package campcloth.comfort.model;

import campcloth.comfort.Reading.OutOfRange;
import campcloth.figure.Range;
import java.util.Optional;

/**
 * Air and body in motion, as ISO 11079:2007 conditions them: relative air speed at least 0.4 m/s, walking speed at least
 * 0.0052 (M - 58) m/s (the legs of somebody who works are never still) and at most 1.2 m/s.
 *
 * @param speedMs relative air speed v_ar, m/s
 * @param walkingMs walking speed w, m/s
 */
public record Motion(double speedMs, double walkingMs) {

    private static final Range SPEED = new Range("relative air speed", 0, 18, "m/s");
    private static final double CALMEST_MS = 0.4;
    private static final double FASTEST_WALK_MS = 1.2;

    public static Motion conditioned(double speedMs, double walkingMs, double metabolicWm2) {
        double legs = Math.max(0, 0.0052 * (metabolicWm2 - 58));
        return new Motion(
                Math.max(CALMEST_MS, speedMs), Math.min(FASTEST_WALK_MS, Math.max(legs, Math.max(0, walkingMs))));
    }

    /** Why the corrections for wind do not hold at that relative air speed; empty where they do. */
    public static Optional<OutOfRange> outside(double speedMs) {
        return Limit.firstPassed("wind and walking, ISO 11079:2007", new Limit(SPEED, speedMs));
    }

    /** exp(-0.15 v - 0.22 w): how much of the still air layer is left. */
    double stillness() {
        return Math.exp(-0.15 * speedMs - 0.22 * walkingMs);
    }

    /** Insulation of the boundary air layer I_a,r = 0.092 exp(-0.15 v - 0.22 w) - 0.0045, m2 K/W. */
    double boundaryM2KW() {
        return 0.092 * stillness() - 0.0045;
    }
}
