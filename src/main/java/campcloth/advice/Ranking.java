package campcloth.advice;

import campcloth.comfort.Dressing;
import campcloth.comfort.SpellNeeds;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cloths judged, best first: by verdict, then by score, so that no score carries a cloth past a stricter verdict.
 *
 * @param judged the cloths
 * @param needs what each spell asks of clothing
 * @param worn what is worn besides, told and presumed, by spells
 * @param weights how much each criterion counts at this event, by name, together 1; empty where there was nothing to rank
 * @param cautions what to bear in mind with all of them
 * @param layers what to wear besides; empty where a cloth is warm enough, or none may be chosen
 */
public record Ranking(
        List<Judged> judged,
        List<SpellNeeds> needs,
        List<Dressing> worn,
        Map<String, Double> weights,
        List<String> cautions,
        Optional<Layers> layers) {

    static final Comparator<Judged> BEST_FIRST = Comparator.comparing(Judged::verdict)
            .thenComparing(Comparator.comparing(Judged::suitsDesign).reversed())
            .thenComparing(Comparator.comparingDouble(Judged::score).reversed())
            .thenComparing(j -> j.candidate().id());

    public Ranking {
        judged = judged.stream().sorted(BEST_FIRST).toList();
        needs = List.copyOf(needs);
        worn = List.copyOf(worn);
        cautions = List.copyOf(cautions);
    }

    public long count(Verdict verdict) {
        return judged.stream().filter(j -> j.verdict() == verdict).count();
    }
}
