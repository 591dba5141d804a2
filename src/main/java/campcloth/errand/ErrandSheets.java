package campcloth.errand;

import campcloth.advice.Adviser;
import campcloth.advice.Ranking;
import campcloth.advice.Warning;
import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.event.Event;
import campcloth.fibre.Fibres;
import campcloth.fire.FireJudgement;
import campcloth.fire.OutfitAdvice;
import campcloth.fire.RuleConflicts;
import campcloth.fire.WornCloth;
import campcloth.garment.Sizes;
import campcloth.plan.CuttingPlan;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Makes the sheet of an errand. */
public final class ErrandSheets {

    private final Adviser adviser;
    private final OutfitAdvice fire;
    private final Sizes sizes;
    private final Fibres fibres;

    public ErrandSheets(Adviser adviser, OutfitAdvice fire, Sizes sizes, Fibres fibres) {
        this.adviser = adviser;
        this.fire = fire;
        this.sizes = sizes;
        this.fibres = fibres;
    }

    /**
     * The sheet, from the errand alone and the plan that was made for it.
     *
     * @param plan the plan that the errand names
     */
    public ErrandSheet of(Errand errand, CuttingPlan plan) {
        Asked asked = errand.asked(sizes);
        return of(errand, plan, asked, adviser.rank(asked.question()));
    }

    /**
     * The same where the cloth was judged already.
     *
     * @param asked what the errand asks
     * @param ranking what was answered to that, for the errand's cloth alone
     */
    public ErrandSheet of(Errand errand, CuttingPlan plan, Asked asked, Ranking ranking) {
        Event event = errand.event().event();
        CutErrand cut = CutErrand.of(errand, plan);
        List<Asked> others = errand.askedForOthers(sizes);
        ForEverybody judged = new ForEverybody(
                ranking.judged().get(0),
                others.stream()
                        .map(other -> adviser.rank(other.question()).judged().get(0))
                        .toList());
        FireJudgement atFire = Stream.concat(Stream.of(asked), others.stream())
                .map(one -> fire(errand.cloth().cloth(), one))
                .max(Comparator.comparingDouble(FireJudgement::hazard))
                .orElseThrow();
        AppliedRules rules = new AppliedRules(judged.rules(), RuleConflicts.of(event.rules(), fibres));
        return new ErrandSheet(
                errand.title(),
                event.name(),
                event.dates(),
                GarmentSheet.designName(errand.garment().design()),
                errand.garment().inAll(),
                judged.verdict(),
                new Heed(warnings(judged, asked), AtTheFire.of(atFire), ranking.cautions(), plan.cautions()),
                Shopping.items(cut),
                Kit.items(cut),
                SheetWearer.of(cut),
                BeforeCutting.steps(cut),
                GarmentSheet.of(cut),
                rules,
                ToAsk.of(cut, atFire, rules),
                asked.presumed(ranking));
    }

    /** About the cloth, and about what is worn besides: the most urgent first. */
    private List<Warning> warnings(ForEverybody judged, Asked asked) {
        Stream<Warning> besides = fire
                .wornBesides(asked.question().outfit(), asked.question().event())
                .stream()
                .flatMap(part -> part.judgement().warnings().stream())
                .map(Warning::of);
        return Stream.concat(judged.warnings().stream(), besides)
                .distinct()
                .sorted(Comparator.comparing(Warning::severity).reversed())
                .toList();
    }

    private FireJudgement fire(Cloth cloth, Asked asked) {
        WornCloth worn =
                WornCloth.of(Estimates.complete(cloth), asked.question().wearAtFire());
        return fire.ofGarment(worn, asked.question().outfit(), asked.question().event());
    }
}
