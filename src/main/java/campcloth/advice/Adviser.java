package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.comfort.Comfort;
import campcloth.comfort.Course;
import campcloth.comfort.Courses;
import campcloth.event.Event;
import campcloth.fire.FireAdvice;
import campcloth.fire.OutfitAdvice;
import campcloth.fire.PartJudgement;
import campcloth.fire.WhatIf;
import campcloth.fire.WornCloth;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        tookSince(begun, question.candidates().size());
        return ranking;
    }

    /** Tells the watch of a ranking. */
    void tookSince(long begunNanos, int cloths) {
        watch.ranked(cloths, Duration.ofNanos(System.nanoTime() - begunNanos));
    }

    private Ranking ranking(Question question) {
        if (question.candidates().isEmpty()) {
            return nothing(question, comfort(question));
        }
        Judging judging = judging(question, question.candidates().get(0));
        return judging.ranking(
                question.candidates().parallelStream().map(judging::weighed).toList());
    }

    /** How any cloth is judged for the question. */
    Judging judging(Question question, Candidate any) {
        return Judging.of(question, comfort(question), fire, any.cloth());
    }

    private static Ranking nothing(Question question, Comfort comfort) {
        return new Ranking(
                List.of(), comfort.needs(), comfort.dressings(question.wear()), Map.of(), List.of(), Optional.empty());
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
                completed -> fire.ofGarment(
                        WornCloth.of(completed, question.wearAtFire()), question.outfit(), question.event()));
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
}
