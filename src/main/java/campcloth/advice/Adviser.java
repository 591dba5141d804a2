package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.Prickle;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.comfort.ComfortCautions;
import campcloth.event.Event;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireJudgement;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Judges and ranks cloths for a garment at an event. */
public final class Adviser {

    private final FireAdvice fire;

    public Adviser(FireAdvice fire) {
        this.fire = fire;
    }

    public Ranking rank(Question question) {
        Event event = question.event();
        Comfort comfort = Comfort.in(event.spells());
        List<Judged> judged = new ArrayList<>();
        Set<String> fireCautions = new LinkedHashSet<>();
        for (Candidate candidate : question.candidates()) {
            Facts facts = facts(candidate.cloth(), question.wear(), event, comfort);
            fireCautions.addAll(facts.fire().cautions());
            judged.add(judged(candidate, facts));
        }
        List<String> cautions = new ArrayList<>(fireCautions);
        cautions.addAll(ComfortCautions.of(event.spells()));
        return new Ranking(judged, comfort.needs(), comfort.wardrobe(question.wear()), cautions);
    }

    private Facts facts(Cloth cloth, Wear wear, Event event, Comfort comfort) {
        Cloth completed = Estimates.complete(cloth);
        return new Facts(
                completed,
                wear,
                comfort.ensemble(completed, wear),
                comfort.of(completed, wear),
                fire.judge(completed, wear, event),
                Prickle.of(completed));
    }

    private static Judged judged(Candidate candidate, Facts facts) {
        List<Assessment> criteria =
                Criteria.ALL.stream().map(c -> c.assess(facts)).toList();
        List<Warning> warnings = Warnings.of(facts);
        return new Judged(
                candidate,
                verdict(facts.fire(), warnings),
                total(criteria, Assessment::score),
                total(criteria, Assessment::scoreLow),
                total(criteria, Assessment::scoreHigh),
                criteria,
                warnings,
                facts.fire().rules());
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

    private static double total(List<Assessment> criteria, ToDoubleFunction<Assessment> score) {
        double sum = 0;
        for (int i = 0; i < criteria.size(); i++) {
            sum += Criteria.ALL.get(i).share() * score.applyAsDouble(criteria.get(i));
        }
        return sum;
    }
}
