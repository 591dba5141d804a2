package campcloth.fire;

import campcloth.event.Provenance;
import campcloth.event.SafetyRule;
import campcloth.event.SafetyRule.Authority;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** More than one edition of an authority's rules: the same source or the same words under several editions or days of issue. */
final class RuleEditions {

    private static final String STANDS =
            "All of them are applied, so the strictest stands; a newer one does not lift an older one here. Ask which holds.";

    /** Whose, and what they have in common. */
    private record Shared(Authority authority, String text) {}

    private RuleEditions() {}

    static List<RuleConflict> of(List<SafetyRule> rules) {
        Set<List<SafetyRule>> groups = new LinkedHashSet<>();
        groups.addAll(severalEditions(rules, rule -> rule.provenance().source()));
        groups.addAll(severalEditions(rules, rule -> Optional.of(rule.statement())));
        return groups.stream().map(RuleEditions::conflict).toList();
    }

    private static List<List<SafetyRule>> severalEditions(
            List<SafetyRule> rules, Function<SafetyRule, Optional<String>> text) {
        Map<Shared, List<SafetyRule>> byText = rules.stream()
                .filter(rule -> text.apply(rule).isPresent())
                .collect(Collectors.groupingBy(
                        rule -> new Shared(
                                rule.authority(),
                                text.apply(rule).orElseThrow().strip().toLowerCase(Locale.ROOT)),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return byText.values().stream()
                .filter(same -> differ(same, Provenance::edition) || differ(same, Provenance::issuedOn))
                .toList();
    }

    private static boolean differ(List<SafetyRule> rules, Function<Provenance, Optional<?>> told) {
        return rules.stream()
                        .map(rule -> told.apply(rule.provenance()))
                        .flatMap(Optional::stream)
                        .distinct()
                        .count()
                > 1;
    }

    private static RuleConflict conflict(List<SafetyRule> rules) {
        return RuleConflict.of(
                "the edition",
                rules,
                rules.stream()
                        .map(rule -> Stream.of(
                                        rule.provenance().edition().map(edition -> "Edition " + edition),
                                        rule.provenance().issuedOn().map(day -> "issued on " + day))
                                .flatMap(Optional::stream)
                                .collect(Collectors.collectingAndThen(
                                        Collectors.joining(", "), text -> text.isEmpty() ? "Edition untold" : text)))
                        .toList(),
                STANDS,
                false);
    }
}
