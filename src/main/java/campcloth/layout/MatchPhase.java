package campcloth.layout;

import campcloth.figure.Range;
import java.util.Optional;

/**
 * The place of the repeat on which the match points of a group lie.
 *
 * @param group name of the group
 * @param alongCm from the beginning of a repeat, along the cloth; empty where nothing repeats along or it is left open
 * @param acrossCm the same across
 */
public record MatchPhase(String group, Optional<Double> alongCm, Optional<Double> acrossCm) {

    private static final double MOST_CM = 1000;

    public MatchPhase {
        alongCm.ifPresent(new Range("alongCm", 0, MOST_CM, "cm")::check);
        acrossCm.ifPresent(new Range("acrossCm", 0, MOST_CM, "cm")::check);
    }
}
