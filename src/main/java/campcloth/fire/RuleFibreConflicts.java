package campcloth.fire;

import campcloth.event.SafetyRule;
import campcloth.fibre.Fibres;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Rules whose lists of fibres cross: one allows only what another forbids, leaves out or lets be only a small share. */
final class RuleFibreConflicts {

    private static final double ALL_PERCENT = 100;
    private static final String NO_CLOTH =
            "Where all of them hold no cloth meets them all: it is ruled out. Ask whose rules they are.";

    private final List<SafetyRule> listing;
    private final List<SafetyRule> forbidding;
    private final Set<String> onEveryList;
    private final Set<String> left;

    private RuleFibreConflicts(List<SafetyRule> rules) {
        this.listing = rules.stream().filter(rule -> !allowed(rule).isEmpty()).toList();
        Set<String> onAnyList =
                listing.stream().flatMap(rule -> allowed(rule).stream()).collect(Collectors.toCollection(TreeSet::new));
        this.forbidding = rules.stream()
                .filter(rule -> forbidden(rule).stream().anyMatch(onAnyList::contains))
                .toList();
        this.onEveryList = new TreeSet<>(onAnyList);
        listing.forEach(rule -> onEveryList.retainAll(allowed(rule)));
        this.left = new TreeSet<>(onEveryList);
        forbidding.forEach(rule -> left.removeAll(forbidden(rule)));
    }

    static List<RuleConflict> of(List<SafetyRule> rules, Fibres fibres) {
        RuleFibreConflicts all = new RuleFibreConflicts(rules);
        if (all.listing.isEmpty()) {
            return List.of();
        }
        List<RuleConflict> conflicts = new ArrayList<>();
        all.lists().ifPresent(conflicts::add);
        all.onlyWhatMelts(rules, fibres).ifPresent(conflicts::add);
        return conflicts;
    }

    private Optional<RuleConflict> lists() {
        boolean same =
                listing.stream().map(RuleFibreConflicts::allowed).distinct().count() < 2;
        if (same && forbidding.isEmpty()) {
            return Optional.empty();
        }
        List<SafetyRule> involved = new ArrayList<>(listing);
        List<String> says = new ArrayList<>();
        listing.forEach(rule -> says.add("Only " + joined(allowed(rule)) + " allowed"));
        for (SafetyRule rule : forbidding) {
            involved.add(rule);
            says.add("Forbidden: " + joined(forbidden(rule)));
        }
        String stands = left.isEmpty()
                ? NO_CLOTH
                : "The strictest of each stands: where all of them hold only " + joined(left) + " is left.";
        return Optional.of(RuleConflict.of("the fibres", involved, says, stands, left.isEmpty()));
    }

    /** Where all that is allowed melts, and another rule limits the share that melts. */
    private Optional<RuleConflict> onlyWhatMelts(List<SafetyRule> rules, Fibres fibres) {
        boolean allMelts = !left.isEmpty() && left.stream().allMatch(key -> melts(key, fibres));
        return rules.stream()
                .filter(rule -> rule.conditions().maxMeltablePercent().orElse(ALL_PERCENT) < ALL_PERCENT)
                .filter(rule -> allMelts)
                .min(Comparator.comparing(
                        rule -> rule.conditions().maxMeltablePercent().orElse(ALL_PERCENT)))
                .map(limiting -> {
                    List<SafetyRule> involved = new ArrayList<>(List.of(limiting));
                    List<String> says = new ArrayList<>(List.of("Only a part may melt"));
                    listing.forEach(rule -> {
                        involved.add(rule);
                        says.add("Only " + joined(allowed(rule)) + " allowed");
                    });
                    return RuleConflict.of(
                            "fibres that melt", involved, says, "All that is allowed melts. " + NO_CLOTH, true);
                });
    }

    private static boolean melts(String key, Fibres fibres) {
        return fibres.named(key).map(fibre -> fibre.family().countsAsMeltable()).orElse(false);
    }

    private static Set<String> allowed(SafetyRule rule) {
        return new TreeSet<>(RuleFibres.keys(rule.conditions().allowedFibres()));
    }

    private static Set<String> forbidden(SafetyRule rule) {
        return new TreeSet<>(RuleFibres.keys(rule.conditions().forbiddenFibres()));
    }

    private static String joined(Set<String> keys) {
        return FibreWords.joined(List.copyOf(keys), "and");
    }
}
