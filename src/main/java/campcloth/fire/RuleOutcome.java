package campcloth.fire;

import campcloth.event.SafetyRule;

/**
 * What a rule says of a cloth.
 *
 * @param authority whose rule it is
 * @param outcome what it comes to
 * @param statement the rule's own words
 * @param because why
 */
public record RuleOutcome(SafetyRule.Authority authority, Outcome outcome, String statement, String because) {

    /** What a rule comes to, from least to most strict. */
    public enum Outcome {
        /** The cloth keeps to everything in the rule that could be checked. */
        PASSED,
        /** The rule holds nearer to a fire than the wearer is said to be. */
        NOT_IN_REACH,
        /** Only a person can judge it. */
        ASK,
        /** The cloth breaks it. */
        FORBIDDEN
    }

    /** The same, said of a part of the outfit. */
    RuleOutcome saidOf(String part) {
        return new RuleOutcome(authority, outcome, statement, part + ": " + because);
    }
}
