package campcloth.fire;

import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.event.Event;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.FireWarning.Code;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Judges a garment with what is sewn into it, and what is worn beside it, at an event. What is sewn in belongs to the garment:
 * the strictest of all stands. What is worn beside is judged once: a good cloth is not to blame for a bad shirt, nor does it
 * make up for it.
 */
public final class OutfitAdvice {

    private final FireAdvice fire;

    public OutfitAdvice(FireAdvice fire) {
        this.fire = fire;
    }

    /** A cloth with all that is sewn into the garment. */
    public FireJudgement ofGarment(WornCloth cloth, Outfit outfit, Event event) {
        WornPart own = WornOutfit.own(cloth, outfit);
        FireJudgement alone = fire.judge(own.worn(), event);
        List<PartJudgement> sewnIn = judged(WornOutfit.sewnIn(own.worn(), outfit, fire.fibres()), event);
        return sewnIn.isEmpty() ? alone : joined(own, alone, sewnIn);
    }

    /** What would change the judgement of a cloth with all that is sewn into the garment. */
    public WhatIf.Answer whatIf(WornCloth cloth, Outfit outfit, Event event) {
        WhatIf.Judge judge = new WhatIf.Judge() {
            @Override
            public FireJudgement judge(WornCloth other, Event then) {
                return ofGarment(other, outfit, then);
            }

            @Override
            public boolean reaches(WornCloth other, Event then, Gate target) {
                return OutfitAdvice.this.reaches(other, outfit, then, target);
            }
        };
        FireCase now = new FireCase(cloth, event);
        WhatIf.Answer answer = new WhatIf(judge, fire.fibres()).of(now);
        List<Better> better =
                new ArrayList<>(otherParts(now, outfit, answer.now().gate()));
        better.addAll(answer.better());
        return new WhatIf.Answer(answer.now(), better);
    }

    /** The gate that {@link #ofGarment} comes to, without its sentences. */
    public Gate gate(WornCloth cloth, Outfit outfit, Event event) {
        if (reaches(cloth, outfit, event, Gate.CLEAR)) {
            return Gate.CLEAR;
        }
        return reaches(cloth, outfit, event, Gate.CAUTION) ? Gate.CAUTION : Gate.RULED_OUT;
    }

    /** Whether {@link #ofGarment} comes to that gate or a milder one; parts that are alike are looked at once. */
    boolean reaches(WornCloth cloth, Outfit outfit, Event event, Gate target) {
        WornCloth own = WornOutfit.own(cloth, outfit).worn();
        return Stream.concat(
                        Stream.of(own),
                        WornOutfit.sewnIn(own, outfit, fire.fibres()).stream().map(WornPart::worn))
                .distinct()
                .allMatch(worn -> fire.reaches(worn, event, target));
    }

    /** Another of one part that is sewn in; where no single one betters it, another of all of them. */
    private List<Better> otherParts(FireCase now, Outfit outfit, Gate from) {
        List<OutfitPart> sewnIn =
                outfit.parts().stream().filter(part -> part.kind().isSewnIn()).toList();
        List<Better> better = sewnIn.stream()
                .flatMap(part -> otherParts(now, outfit, from, List.of(part)).stream())
                .toList();
        return better.isEmpty() && sewnIn.size() > 1
                ? otherParts(now, outfit, from, sewnIn).stream().toList()
                : better;
    }

    /** The garment with others in the place of these parts that are clear by themselves: as if they were not there. */
    private Optional<Better> otherParts(FireCase now, Outfit outfit, Gate from, List<OutfitPart> parts) {
        List<OutfitPart> rest = new ArrayList<>(outfit.parts());
        rest.removeAll(parts);
        FireJudgement then = ofGarment(now.cloth(), new Outfit(rest), now.event());
        return then.gate().compareTo(from) < 0
                ? Optional.of(new Better(List.of(new OtherPart(parts)), now, from, then))
                : Optional.empty();
    }

    /** Each garment worn beside it. */
    public List<PartJudgement> wornBesides(Outfit outfit, Event event) {
        return judged(WornOutfit.wornBesides(outfit, fire.fibres()), event);
    }

    private List<PartJudgement> judged(List<WornPart> parts, Event event) {
        return parts.stream()
                .map(part -> new PartJudgement(part, told(part, fire.judge(part.worn(), event))))
                .toList();
    }

    /** The judgement of a part with warnings that name it. */
    private static FireJudgement told(WornPart part, FireJudgement judged) {
        List<FireWarning> warnings = new ArrayList<>(PartWarnings.of(
                part,
                judged.meltWarning(),
                judged.warnings().stream().filter(w -> w.code() != Code.RULE).toList()));
        List<RuleOutcome> rules =
                judged.rules().stream().map(r -> r.saidOf(part.heading())).toList();
        rules.forEach(rule -> FireAdvice.ofRule(rule, warnings));
        return new FireJudgement(
                judged.gate(),
                judged.worst(),
                judged.spells(),
                judged.meltWarning(),
                rules,
                byUrgency(warnings),
                judged.cautions());
    }

    private static FireJudgement joined(WornPart own, FireJudgement alone, List<PartJudgement> sewnIn) {
        Gate gate = alone.gate();
        Optional<SpellHazard> worst = alone.worst();
        MeltWarning melt = alone.meltWarning();
        List<RuleOutcome> rules = new ArrayList<>(alone.rules());
        List<FireWarning> warnings = new ArrayList<>(alone.warnings());
        for (PartJudgement part : sewnIn) {
            FireJudgement judged = part.judgement();
            gate = FireAdvice.stricter(gate, judged.gate());
            melt = judged.meltWarning().compareTo(melt) > 0 ? judged.meltWarning() : melt;
            worst = judged.hazard() > worst.map(w -> w.hazard().hazard()).orElse(0.0) ? judged.worst() : worst;
            tighten(rules, judged.rules(), warnings);
            judged.warnings().stream().filter(w -> w.code() != Code.RULE).forEach(warnings::add);
        }
        if (!alone.spells().isEmpty()) {
            List<WornPart> parts = new ArrayList<>(List.of(own));
            sewnIn.forEach(part -> parts.add(part.part()));
            warnings.addAll(Scaffold.among(parts));
        }
        return new FireJudgement(
                gate, worst, alone.spells(), melt, rules, byUrgency(warnings), alone.cautions(), sewnIn);
    }

    /** Puts the outcome for a part in place of a milder one, rule by rule, and warns of it. */
    private static void tighten(List<RuleOutcome> rules, List<RuleOutcome> ofPart, List<FireWarning> warnings) {
        for (int i = 0; i < rules.size(); i++) {
            RuleOutcome stricter = ofPart.get(i);
            if (stricter.outcome().compareTo(rules.get(i).outcome()) > 0) {
                rules.set(i, stricter);
                FireAdvice.ofRule(stricter, warnings);
            }
        }
    }

    private static List<FireWarning> byUrgency(List<FireWarning> warnings) {
        return warnings.stream()
                .sorted(Comparator.comparing(FireWarning::severity).reversed())
                .toList();
    }
}
