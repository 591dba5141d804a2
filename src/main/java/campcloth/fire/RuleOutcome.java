package campcloth.fire;

import campcloth.event.Provenance;
import campcloth.event.SafetyRule;

/**
 * What a rule says of a cloth.
 *
 * @param authority whose rule it is
 * @param outcome what it comes to
 * @param statement the rule's own words
 * @param because why
 * @param provenance where the rule stands
 */
public record RuleOutcome(
        SafetyRule.Authority authority, Outcome outcome, String statement, String because, Provenance provenance) {

    /** What a rule comes to, from least to most strict. */
    public enum Outcome {
        /** The cloth keeps to everything in the rule that could be checked. */
        PASSED,
        /** The rule holds nearer to a fire than the wearer is said to be, or for what others do there. */
        NOT_IN_REACH,
        /** Only a person can judge it. */
        ASK,
        /** The cloth, or the wearer's place, breaks it. */
        FORBIDDEN
    }

    /** The rule in its own words, with where it stands. */
    public String quoted() {
        return RuleWords.quoted(authority, statement, provenance);
    }

    /** The same, said of a part of the outfit. */
    RuleOutcome saidOf(String part) {
        return new RuleOutcome(authority, outcome, statement, part + ": " + because, provenance);
    }
}
