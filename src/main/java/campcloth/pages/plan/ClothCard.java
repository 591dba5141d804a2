package campcloth.pages.plan;

import static campcloth.figure.Words.fixed;

import campcloth.advice.Assessment;
import campcloth.advice.Judged;
import campcloth.advice.Ranking;
import campcloth.advice.Verdict;
import campcloth.advice.Warning;
import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Property;
import campcloth.figure.Figure;
import campcloth.fire.RuleOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A judged cloth as a page shows it.
 *
 * @param place from 1, in the whole ranking
 * @param weight mass by area, completed by an estimate
 * @param score 0 to 100, as whole numbers
 * @param urgent what to heed before all else, most urgent first: never hidden
 * @param notes what else to know
 * @param telling the criteria that say most: what is best in it and what is worst
 * @param criteria all of them
 * @param asks rules that forbid it or that only a person can judge
 * @param otherRules the others
 */
public record ClothCard(
        int place,
        String id,
        String name,
        String blend,
        Figure weight,
        Verdict verdict,
        boolean suitsDesign,
        String score,
        String scoreLow,
        String scoreHigh,
        List<Warning> urgent,
        List<Warning> notes,
        List<CriterionRow> telling,
        List<CriterionRow> criteria,
        List<RuleOutcome> asks,
        List<RuleOutcome> otherRules) {

    /** What one criterion says. */
    public record CriterionRow(
            String name,
            boolean merit,
            String score,
            String scoreLow,
            String scoreHigh,
            int weightPercent,
            @Nullable String value,
            @Nullable String low,
            @Nullable String high,
            String unit,
            String because,
            String basis) {

        private static CriterionRow of(Assessment said, boolean merit, double weight) {
            return new CriterionRow(
                    said.criterion(),
                    merit,
                    fixed(said.score(), 0),
                    fixed(said.scoreLow(), 0),
                    fixed(said.scoreHigh(), 0),
                    (int) Math.round(100 * weight),
                    said.quantity().map(q -> fixed(q.value(), 2)).orElse(null),
                    said.quantity().map(q -> fixed(q.low(), 2)).orElse(null),
                    said.quantity().map(q -> fixed(q.high(), 2)).orElse(null),
                    said.unit(),
                    said.because(),
                    said.basis().name());
        }
    }

    static ClothCard of(int place, Judged judged, Ranking ranking) {
        Cloth cloth = judged.candidate().cloth();
        return new ClothCard(
                place,
                judged.candidate().id(),
                cloth.name(),
                cloth.blend().words(),
                Estimates.complete(cloth).required(Property.WEIGHT_GSM),
                judged.verdict(),
                judged.suitsDesign(),
                fixed(judged.score(), 0),
                fixed(judged.scoreLow(), 0),
                fixed(judged.scoreHigh(), 0),
                warnings(judged, true),
                warnings(judged, false),
                telling(judged, ranking.weights()),
                judged.criteria().stream()
                        .map(said -> CriterionRow.of(said, true, weight(said, ranking.weights())))
                        .toList(),
                rules(judged, true),
                rules(judged, false));
    }

    private static List<Warning> warnings(Judged judged, boolean urgent) {
        return judged.warnings().stream()
                .filter(warning -> (warning.severity() != Warning.Severity.NOTE) == urgent)
                .sorted(Comparator.comparing(Warning::severity).reversed())
                .toList();
    }

    private static List<RuleOutcome> rules(Judged judged, boolean toAsk) {
        return judged.rules().stream()
                .filter(rule -> toAsk
                        == (rule.outcome() == RuleOutcome.Outcome.ASK
                                || rule.outcome() == RuleOutcome.Outcome.FORBIDDEN))
                .toList();
    }

    /** What gains most by its weight, and what loses most; of those that do not count at the event, neither. */
    private static List<CriterionRow> telling(Judged judged, Map<String, Double> weights) {
        List<Assessment> counting = judged.criteria().stream()
                .filter(said -> weight(said, weights) > 0 && said.quantity().isPresent())
                .toList();
        List<CriterionRow> telling = new ArrayList<>();
        counting.stream()
                .max(Comparator.comparingDouble(said -> weight(said, weights) * said.score()))
                .ifPresent(best -> telling.add(CriterionRow.of(best, true, weight(best, weights))));
        counting.stream()
                .max(Comparator.comparingDouble(said -> weight(said, weights) * (100 - said.score())))
                .filter(worst -> telling.stream().noneMatch(row -> row.name().equals(worst.criterion())))
                .ifPresent(worst -> telling.add(CriterionRow.of(worst, false, weight(worst, weights))));
        return telling;
    }

    private static double weight(Assessment said, Map<String, Double> weights) {
        return weights.getOrDefault(said.criterion(), 0.0);
    }
}
