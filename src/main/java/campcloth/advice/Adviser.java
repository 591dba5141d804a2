package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Prickle;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.event.Event;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireJudgement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Judges and ranks cloths for a garment at an event. */
public final class Adviser {

    private final FireAdvice fire;

    public Adviser(FireAdvice fire) {
        this.fire = fire;
    }

    public Ranking rank(Question question) {
        Comfort comfort = Comfort.in(question.event().spells()).wearing(question.outfit());
        if (question.candidates().isEmpty()) {
            return new Ranking(
                    List.of(),
                    comfort.needs(),
                    comfort.wardrobe(question.wear()),
                    Map.of(),
                    List.of(),
                    Optional.empty());
        }
        return ranked(question, comfort);
    }

    private Ranking ranked(Question question, Comfort comfort) {
        Event event = question.event();
        Wear wear = question.wear();
        Bounds bounds = Bounds.of(
                comfort, Estimates.complete(question.candidates().get(0).cloth()), wear);
        boolean atFire = event.spells().stream().anyMatch(s -> s.fireInUse().isPresent());
        Map<String, Double> weights = Criteria.weights(Demands.of(bounds, wear.nextToSkin(), atFire));
        List<Weighed> weighed = new ArrayList<>();
        Set<String> cautions = new LinkedHashSet<>();
        for (Candidate candidate : question.candidates()) {
            Facts facts = facts(candidate.cloth(), question, comfort, bounds);
            cautions.addAll(facts.fire().cautions());
            weighed.add(new Weighed(judged(candidate, facts, weights), facts));
        }
        cautions.addAll(EventCautions.of(event, bounds));
        weighed.sort(Comparator.comparing(Weighed::judged, Ranking.BEST_FIRST));
        return new Ranking(
                weighed.stream().map(Weighed::judged).toList(),
                comfort.needs(),
                comfort.wardrobe(wear),
                weights,
                List.copyOf(cautions),
                LayerAdvice.of(weighed, question, comfort, fire));
    }

    private Facts facts(Cloth cloth, Question question, Comfort comfort, Bounds bounds) {
        Cloth completed = Estimates.complete(cloth);
        return new Facts(
                completed,
                question.wear(),
                comfort.ensemble(completed, question.wear()),
                comfort.of(completed, question.wear()),
                fire.judge(completed, question.wearAtFire(), question.event()),
                Prickle.of(completed),
                bounds);
    }

    private static Judged judged(Candidate candidate, Facts facts, Map<String, Double> weights) {
        List<Assessment> criteria =
                Criteria.ALL.stream().map(c -> c.assess(facts)).toList();
        List<Warning> warnings = Warnings.of(facts);
        return new Judged(
                candidate,
                verdict(facts.fire(), warnings),
                Warnings.suitsDesign(facts),
                total(criteria, weights, Assessment::score),
                total(criteria, weights, Assessment::scoreLow),
                total(criteria, weights, Assessment::scoreHigh),
                criteria,
                warnings,
                facts.fire().rules(),
                WetSpell.of(facts.spells()));
    }

    /** The gate of fire and rules, and caution where any warning asks for it. */
    private static Verdict verdict(FireJudgement fire, List<Warning> warnings) {
        return switch (fire.gate()) {
            case RULED_OUT -> Verdict.RULED_OUT;
            case CAUTION -> Verdict.CAUTION;
            case CLEAR ->
                warnings.stream().anyMatch(w -> w.severity() != Warning.Severity.NOTE)
                        ? Verdict.CAUTION
                        : Verdict.SUITABLE;
        };
    }

    private static double total(
            List<Assessment> criteria, Map<String, Double> weights, ToDoubleFunction<Assessment> score) {
        return criteria.stream()
                .mapToDouble(a -> weights.getOrDefault(a.criterion(), 0.0) * score.applyAsDouble(a))
                .sum();
    }
}
