package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Prickle;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.comfort.SpellComfort;
import campcloth.fire.FireJudgement;
import campcloth.fire.OutfitAdvice;
import campcloth.fire.WornCloth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * How cloths are judged for one question: all that is the same whichever the cloth. May be shared between threads.
 *
 * @param question the question; its candidates are of no matter
 * @param comfort the event in that outfit
 * @param fire fire and rules
 * @param bounds the most that the choice of a cloth can do
 * @param weights how much each criterion counts, by name
 * @param ofTheRest what to heed about the rest of the outfit
 */
record Judging(
        Question question,
        Comfort comfort,
        OutfitAdvice fire,
        Bounds bounds,
        Map<String, Double> weights,
        List<Warning> ofTheRest) {

    /** @param any any cloth */
    static Judging of(Question question, Comfort comfort, OutfitAdvice fire, Cloth any) {
        Wear wear = question.wear();
        Bounds bounds = Bounds.of(comfort, Estimates.complete(any), wear);
        boolean atFire =
                question.event().spells().stream().anyMatch(s -> s.fireInUse().isPresent());
        return new Judging(
                question,
                comfort,
                fire,
                bounds,
                Criteria.weights(Demands.of(bounds, wear.nextToSkin(), atFire)),
                Warnings.ofTheRest(fire.wornBesides(question.outfit(), question.event())));
    }

    /** The same for the question with other candidates. */
    Judging about(Question other) {
        return new Judging(other, comfort, fire, bounds, weights, ofTheRest);
    }

    Weighed weighed(Candidate candidate) {
        Facts facts = facts(candidate.cloth());
        return new Weighed(judged(candidate, facts), facts);
    }

    /** @param cloths all cloths of the question, in any order */
    Ranking ranking(List<Weighed> cloths) {
        Set<String> cautions = new LinkedHashSet<>();
        cloths.forEach(weighed -> cautions.addAll(weighed.facts().fire().cautions()));
        cautions.addAll(EventCautions.of(question.event(), bounds));
        List<Weighed> weighed = new ArrayList<>(cloths);
        weighed.sort(Comparator.comparing(Weighed::judged, Ranking.BEST_FIRST));
        return new Ranking(
                weighed.stream().map(Weighed::judged).toList(),
                comfort.needs(),
                comfort.dressings(question.wear()),
                weights,
                List.copyOf(cautions),
                LayerAdvice.of(weighed, question, comfort, fire));
    }

    /** What warmth, heat and breathability bring to the score together. */
    double comfortScore(List<SpellComfort> spells) {
        return weight(Criteria.WARMTH) * Warmth.scoreOrUsual(spells, bounds)
                + weight(Criteria.HEAT) * Heat.scoreOrUsual(spells, bounds)
                + weight(Criteria.BREATHABILITY) * Breathability.score(spells);
    }

    double weight(Criterion criterion) {
        return weights.getOrDefault(criterion.name(), 0.0);
    }

    private Facts facts(Cloth cloth) {
        Cloth completed = Estimates.complete(cloth);
        return new Facts(
                completed,
                question.wear(),
                comfort.ensembles(completed, question.wear()),
                comfort.of(completed, question.wear()),
                fire.ofGarment(WornCloth.of(completed, question.wearAtFire()), question.outfit(), question.event()),
                Prickle.of(completed),
                bounds);
    }

    private Judged judged(Candidate candidate, Facts facts) {
        List<Assessment> criteria =
                Criteria.ALL.stream().map(c -> c.assess(facts)).toList();
        List<Warning> warnings = Warnings.of(facts, ofTheRest);
        return new Judged(
                candidate,
                verdict(facts.fire(), warnings),
                Warnings.suitsDesign(facts),
                total(criteria, Assessment::score),
                total(criteria, Assessment::scoreLow),
                total(criteria, Assessment::scoreHigh),
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

    private double total(List<Assessment> criteria, ToDoubleFunction<Assessment> score) {
        return criteria.stream()
                .mapToDouble(a -> weights.getOrDefault(a.criterion(), 0.0) * score.applyAsDouble(a))
                .sum();
    }
}
