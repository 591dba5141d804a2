package campcloth.event;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.Optional;
import java.util.Set;

/**
 * A rule about clothing at an event. A rule can only forbid or ask, never allow what is otherwise ruled out.
 *
 * @param authority whose rule it is
 * @param statement its words
 * @param maxMeltablePercent greatest share of fibre that melts, percent of mass
 * @param forbiddenFibres keys of fibres that may not be in the cloth at all
 * @param minWeightGsm least mass per area, g/m2
 * @param plainSurfaceOnly whether raised surfaces are forbidden
 * @param withinM distance from a fire within which the rule holds, m; empty: everywhere
 */
public record SafetyRule(
        Authority authority,
        String statement,
        Optional<Double> maxMeltablePercent,
        Set<String> forbiddenFibres,
        Optional<Double> minWeightGsm,
        boolean plainSurfaceOnly,
        Optional<Double> withinM) {

    private static final int LONGEST_STATEMENT = 1000;
    private static final Range MELTABLE = new Range("maxMeltablePercent", 0, 100, "%");
    private static final Range WEIGHT = new Range("minWeightGsm", 0, 2000, "g/m2");
    private static final Range WITHIN = new Range("withinM", 0, 1000, "m");

    public SafetyRule {
        if (statement.isBlank() || statement.length() > LONGEST_STATEMENT) {
            throw Refused.of("statement", "has " + statement.length() + " characters", "give 1 to 1000 characters");
        }
        maxMeltablePercent.ifPresent(MELTABLE::check);
        minWeightGsm.ifPresent(WEIGHT::check);
        withinM.ifPresent(WITHIN::check);
        forbiddenFibres = Set.copyOf(forbiddenFibres);
    }

    /** Whose rule it is. */
    public enum Authority {
        EVENT,
        VENUE,
        LOCAL_LAW
    }

    /** Whether anything in it can be checked on a cloth; if not, only a person can judge it. */
    public boolean canBeChecked() {
        return maxMeltablePercent.isPresent()
                || !forbiddenFibres.isEmpty()
                || minWeightGsm.isPresent()
                || plainSurfaceOnly;
    }
}
