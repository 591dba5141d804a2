package campcloth.event;

import java.util.Optional;
import java.util.Set;

/**
 * A rule about clothing at an event. A rule can only forbid or ask, never allow what is otherwise ruled out.
 *
 * @param authority whose rule it is
 * @param statement its words
 * @param conditions what it asks; may be nothing that could be named: then only a person can judge it
 * @param reach where and for whom it holds
 * @param provenance where it stands and for how long
 */
public record SafetyRule(
        Authority authority, String statement, RuleConditions conditions, RuleReach reach, Provenance provenance) {

    private static final int LONGEST_STATEMENT = 1000;

    public SafetyRule {
        WrittenText.check("statement", statement, LONGEST_STATEMENT);
    }

    /** A rule about cloth, from nobody knows which document. */
    public SafetyRule(
            Authority authority,
            String statement,
            Optional<Double> maxMeltablePercent,
            Set<String> forbiddenFibres,
            Optional<Double> minWeightGsm,
            boolean plainSurfaceOnly,
            Optional<Double> withinM) {
        this(
                authority,
                statement,
                RuleConditions.ofCloth(maxMeltablePercent, forbiddenFibres, minWeightGsm, plainSurfaceOnly),
                new RuleReach(withinM, Set.of()),
                Provenance.UNTOLD);
    }

    /** Whose rule it is. */
    public enum Authority {
        EVENT,
        VENUE,
        LOCAL_LAW
    }
}
