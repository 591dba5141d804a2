package campcloth.fire;

import campcloth.event.SafetyRule;
import campcloth.fibre.Fibres;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/** Finds rules that differ about the same thing. It settles nothing: every rule is applied, so the strictest stands. */
public final class RuleConflicts {

    /** The same order for the same rules, however they are listed. */
    static final Comparator<SafetyRule> ORDER = Comparator.comparing(SafetyRule::authority)
            .thenComparing(SafetyRule::statement)
            .thenComparing(SafetyRule::toString);

    private RuleConflicts() {}

    /** Where these rules differ; the same whatever their order. */
    public static List<RuleConflict> of(List<SafetyRule> rules, Fibres fibres) {
        List<SafetyRule> ordered = rules.stream().distinct().sorted(ORDER).toList();
        return Stream.of(
                        limits(ordered).stream(),
                        RuleReachConflicts.of(ordered).stream(),
                        RuleFibreConflicts.of(ordered, fibres).stream(),
                        RuleEditions.of(ordered).stream())
                .flatMap(Function.identity())
                .toList();
    }

    private static List<RuleConflict> limits(List<SafetyRule> rules) {
        List<RuleConflict> conflicts = new ArrayList<>();
        limit(
                        "the share that melts",
                        rules,
                        rule -> rule.conditions().maxMeltablePercent(),
                        Comparator.naturalOrder(),
                        most -> "at most " + Words.number(most) + " %")
                .ifPresent(conflicts::add);
        limit(
                        "the weight",
                        rules,
                        rule -> rule.conditions().minWeightGsm(),
                        Comparator.reverseOrder(),
                        least -> "at least " + Words.number(least) + " g/m2")
                .ifPresent(conflicts::add);
        limit(
                        "the distance to keep",
                        rules,
                        rule -> rule.conditions().keepAtLeastM(),
                        Comparator.reverseOrder(),
                        least -> "at least " + Words.number(least) + " m")
                .ifPresent(conflicts::add);
        return conflicts;
    }

    private static Optional<RuleConflict> limit(
            String about,
            List<SafetyRule> rules,
            Function<SafetyRule, Optional<Double>> limit,
            Comparator<Double> strictestFirst,
            DoubleFunction<String> words) {
        List<SafetyRule> limiting = rules.stream()
                .filter(rule -> limit.apply(rule).isPresent())
                .sorted(Comparator.comparing(rule -> limit.apply(rule).orElseThrow(), strictestFirst))
                .toList();
        List<Double> limits =
                limiting.stream().map(rule -> limit.apply(rule).orElseThrow()).toList();
        if (limits.stream().distinct().count() < 2) {
            return Optional.empty();
        }
        String strictest = "The strictest stands: " + words.apply(limits.get(0)) + reach(limiting, limits);
        return Optional.of(RuleConflict.of(
                about,
                limiting,
                limits.stream()
                        .map(value -> capital(about) + ": " + words.apply(value))
                        .toList(),
                strictest,
                false));
    }

    /** Where the strictest limit holds; it holds everywhere if one of the rules with it does. */
    private static String reach(List<SafetyRule> limiting, List<Double> limits) {
        List<String> reaches = new ArrayList<>();
        for (int i = 0; i < limiting.size() && limits.get(i).equals(limits.get(0)); i++) {
            reaches.add(RuleWords.reach(limiting.get(i).reach()));
        }
        if (reaches.contains("")) {
            return ".";
        }
        String where = String.join(" and ", reaches.stream().distinct().toList());
        return " " + where + "; elsewhere the strictest of those that hold there.";
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
