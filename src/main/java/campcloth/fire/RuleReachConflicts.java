package campcloth.fire;

import campcloth.event.FireRole;
import campcloth.event.RuleConditions;
import campcloth.event.SafetyRule;
import campcloth.figure.Words;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Rules that ask the same within different distances of a fire. */
final class RuleReachConflicts {

    /** What is asked, and of whom. */
    private record Asked(RuleConditions conditions, Set<FireRole> roles) {

        static Asked of(SafetyRule rule) {
            return new Asked(rule.conditions(), rule.reach().roles());
        }
    }

    private RuleReachConflicts() {}

    static List<RuleConflict> of(List<SafetyRule> rules) {
        Map<Asked, List<SafetyRule>> byAsked = rules.stream()
                .filter(rule -> !rule.conditions().isEmpty())
                .collect(Collectors.groupingBy(Asked::of, LinkedHashMap::new, Collectors.toList()));
        return byAsked.values().stream()
                .filter(same -> same.stream()
                                .map(RuleReachConflicts::withinM)
                                .distinct()
                                .count()
                        > 1)
                .map(RuleReachConflicts::conflict)
                .toList();
    }

    private static RuleConflict conflict(List<SafetyRule> same) {
        List<SafetyRule> widestFirst = same.stream()
                .sorted(Comparator.comparing(RuleReachConflicts::withinM).reversed())
                .toList();
        return RuleConflict.of(
                "where the same is asked",
                widestFirst,
                widestFirst.stream().map(rule -> "It holds " + where(rule)).toList(),
                "The strictest stands: it holds " + where(widestFirst.get(0)) + ".",
                false);
    }

    private static double withinM(SafetyRule rule) {
        return rule.reach().withinM().orElse(Double.POSITIVE_INFINITY);
    }

    private static String where(SafetyRule rule) {
        return rule.reach()
                .withinM()
                .map(m -> "within " + Words.number(m) + " m of a fire")
                .orElse("everywhere");
    }
}
