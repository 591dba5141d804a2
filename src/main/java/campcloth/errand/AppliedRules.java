package campcloth.errand;

import campcloth.fire.RuleConflict;
import campcloth.fire.RuleOutcome;
import java.util.List;

/**
 * What the rules of an event say of a cloth.
 *
 * @param outcomes every rule on file with what it comes to, in the order of the event
 * @param conflicts where they differ, and what stands
 */
public record AppliedRules(List<RuleOutcome> outcomes, List<RuleConflict> conflicts) {

    public AppliedRules {
        outcomes = List.copyOf(outcomes);
        conflicts = List.copyOf(conflicts);
    }
}
