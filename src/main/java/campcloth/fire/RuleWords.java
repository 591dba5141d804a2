package campcloth.fire;

import campcloth.event.FireRole;
import campcloth.event.Provenance;
import campcloth.event.RuleReach;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Rules in sentences. */
final class RuleWords {

    private RuleWords() {}

    /** Whose rule it is, its own words and where it stands: {@code Rule of the event: "No fur" (camp rules, edition 2)}. */
    static String quoted(Authority authority, String statement, Provenance provenance) {
        return "Rule of the " + FireCautions.words(authority) + ": \"" + statement + "\""
                + provenance.cited().map(cited -> " (" + cited + ")").orElse("");
    }

    static String quoted(SafetyRule rule) {
        return quoted(rule.authority(), rule.statement(), rule.provenance());
    }

    /** Where and for whom it holds; empty where it is everywhere and for everybody. */
    static String reach(RuleReach reach) {
        List<String> parts = new ArrayList<>();
        reach.withinM().ifPresent(m -> parts.add("within " + Words.number(m) + " m of a fire"));
        if (!reach.roles().isEmpty()) {
            parts.add("for " + roles(reach.roles()));
        }
        return String.join(", ", parts);
    }

    static String roles(Set<FireRole> roles) {
        return FibreWords.joined(roles.stream().sorted().map(RuleWords::role).toList(), "or");
    }

    private static String role(FireRole role) {
        return switch (role) {
            case NONE -> "no place at a fire";
            case PASSING -> "passing a fire";
            case SEATED -> "sitting at a fire";
            case COOKING -> "cooking at a fire";
            case TENDING -> "tending a fire";
            case CARRYING -> "carrying a flame";
        };
    }
}
