package campcloth.fire;

import campcloth.fire.RuleOutcome.Outcome;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What one part of a rule comes to. */
record Finding(Outcome outcome, String because) {

    static Finding passed(String because) {
        return new Finding(Outcome.PASSED, because);
    }

    static Finding ask(String because) {
        return new Finding(Outcome.ASK, because);
    }

    static Finding forbidden(String because) {
        return new Finding(Outcome.FORBIDDEN, because);
    }

    /** The strictest outcome, with all that is said for it; at least one finding. */
    static Finding strictest(List<Finding> findings) {
        Outcome outcome = findings.stream()
                .map(Finding::outcome)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return new Finding(
                outcome,
                findings.stream()
                        .filter(finding -> finding.outcome == outcome)
                        .map(Finding::because)
                        .collect(Collectors.joining(" ")));
    }

    /** At least as strict as that, with more said for it. */
    Finding atLeast(Outcome least, String more) {
        return new Finding(outcome.compareTo(least) >= 0 ? outcome : least, because + " " + more);
    }
}
