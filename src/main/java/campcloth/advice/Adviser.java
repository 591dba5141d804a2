package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Prickle;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.comfort.Course;
import campcloth.comfort.Courses;
import campcloth.event.Event;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireJudgement;
import campcloth.fire.OutfitAdvice;
import campcloth.fire.PartJudgement;
import campcloth.fire.WhatIf;
import campcloth.fire.WornCloth;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Judges and ranks cloths for a garment at an event. */
public final class Adviser {

    /** Of all courses together, in minutes of their events: about half a second's work. */
    private static final int MOST_MINUTES = 1_000_000;

    /** Of all what-ifs together, in fires and rules of one judgement: about two seconds' work. */
    private static final int MOST_CHECKS = 10_000;

    private static final int USUAL_PAGE = 20;

    private final OutfitAdvice fire;
    private final RankingWatch watch;

    public Adviser(FireAdvice fire) {
        this(fire, (cloths, took) -> {});
    }

    public Adviser(FireAdvice fire, RankingWatch watch) {
        this.fire = new OutfitAdvice(fire);
        this.watch = watch;
    }

    /** What fire and rules say of each garment that is worn besides; the same whatever the cloth. */
    public List<PartJudgement> wornBesides(Question question) {
        return fire.wornBesides(question.outfit(), question.event());
    }

    /**
     * What would change what fire and rules say, by candidate: at least of the first {@value #USUAL_PAGE}, of more where fires,
     * rules and parts sewn in are few.
     */
    public Map<String, WhatIf.Answer> whatIfs(Question question, List<Candidate> candidates) {
        Event event = question.event();
        int fires = (int) event.spells().stream()
                .filter(spell -> spell.fireInUse().isPresent())
                .count();
        int parts = 1 + question.outfit().parts().size();
        int checks = (1 + fires + event.rules().size()) * parts;
        Map<String, WhatIf.Answer> answers = new LinkedHashMap<>();
        candidates.stream()
                .limit(Math.max(USUAL_PAGE, MOST_CHECKS / checks))
                .forEach(candidate -> answers.put(candidate.id(), whatIf(question, candidate)));
        return answers;
    }

    /** Costs some hundred judgements. */
    private WhatIf.Answer whatIf(Question question, Candidate candidate) {
        WornCloth worn = WornCloth.of(Estimates.complete(candidate.cloth()), question.wearAtFire());
        return fire.whatIf(worn, question.outfit(), question.event());
    }

    public Ranking rank(Question question) {
        long begun = System.nanoTime();
        Ranking ranking = ranking(question);
        watch.ranked(question.candidates().size(), Duration.ofNanos(System.nanoTime() - begun));
        return ranking;
    }

    private Ranking ranking(Question question) {
        Comfort comfort = comfort(question);
        if (question.candidates().isEmpty()) {
            return new Ranking(
                    List.of(),
                    comfort.needs(),
                    comfort.dressings(question.wear()),
                    Map.of(),
                    List.of(),
                    Optional.empty());
        }
        return ranked(question, comfort);
    }

    /**
     * How far the order of a ranking hangs on figures and wearer.
     *
     * @param ranking what {@link #rank} answered to the same question
     */
    public Robustness robustness(Question question, Ranking ranking) {
        return robustness(question, ranking, Resampling.USUAL);
    }

    Robustness robustness(Question question, Ranking ranking, Resampling resampling) {
        Comfort comfort = comfort(question);
        return resampling.of(
                ranking,
                question.wear(),
                wearer -> comfort.forWearer(wearer.pace(), wearer.usedToHeat()),
                completed -> fire(completed, question));
    }

    /** The course of the event in one cloth. */
    public Course course(Question question, Cloth cloth) {
        return courses(question).of(Estimates.complete(cloth), question.wear());
    }

    /** The course of the event in short, by candidate, for as many of them in their order as take no more than a moment. */
    public Map<String, Course.Summary> courses(Question question, List<Candidate> candidates) {
        Courses courses = courses(question);
        Map<String, Course.Summary> summaries = new LinkedHashMap<>();
        candidates.stream()
                .limit(Math.max(1, MOST_MINUTES / courses.minutes()))
                .forEach(candidate -> summaries.put(
                        candidate.id(),
                        courses.of(Estimates.complete(candidate.cloth()), question.wear())
                                .summary()));
        return summaries;
    }

    private static Courses courses(Question question) {
        return Courses.in(comfort(question));
    }

    private static Comfort comfort(Question question) {
        Event event = question.event();
        return Comfort.in(event.spells(), event.place()).wearing(question.outfit());
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
        List<Warning> ofTheRest = Warnings.ofTheRest(wornBesides(question));
        for (Candidate candidate : question.candidates()) {
            Facts facts = facts(candidate.cloth(), question, comfort, bounds);
            cautions.addAll(facts.fire().cautions());
            weighed.add(new Weighed(judged(candidate, facts, weights, ofTheRest), facts));
        }
        cautions.addAll(EventCautions.of(event, bounds));
        weighed.sort(Comparator.comparing(Weighed::judged, Ranking.BEST_FIRST));
        return new Ranking(
                weighed.stream().map(Weighed::judged).toList(),
                comfort.needs(),
                comfort.dressings(wear),
                weights,
                List.copyOf(cautions),
                LayerAdvice.of(weighed, question, comfort, fire));
    }

    private Facts facts(Cloth cloth, Question question, Comfort comfort, Bounds bounds) {
        Cloth completed = Estimates.complete(cloth);
        return new Facts(
                completed,
                question.wear(),
                comfort.ensembles(completed, question.wear()),
                comfort.of(completed, question.wear()),
                fire(completed, question),
                Prickle.of(completed),
                bounds);
    }

    private FireJudgement fire(Cloth completed, Question question) {
        return fire.ofGarment(WornCloth.of(completed, question.wearAtFire()), question.outfit(), question.event());
    }

    /** @param ofTheRest what to heed about the rest of the outfit, whatever the cloth */
    private static Judged judged(
            Candidate candidate, Facts facts, Map<String, Double> weights, List<Warning> ofTheRest) {
        List<Assessment> criteria =
                Criteria.ALL.stream().map(c -> c.assess(facts)).toList();
        List<Warning> warnings = Warnings.of(facts, ofTheRest);
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
