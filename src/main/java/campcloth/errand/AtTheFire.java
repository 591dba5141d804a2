package campcloth.errand;

import campcloth.fire.FireGrade;
import campcloth.fire.FireHazard;
import campcloth.fire.FireJudgement;
import campcloth.fire.FireReason;
import campcloth.fire.FireThreat;
import campcloth.fire.SpellHazard;
import campcloth.fire.StandBack;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * How a garment stands at one fire: the worst of its cloth and of what is sewn into it.
 *
 * @param spell name of the spell
 * @param grade quarter of the hazard
 * @param keepAwayM distance to keep from the fire's centre, m, rounded up to a tenth: an estimate for a steady fire
 * @param because what sets that distance, with its margin
 * @param threats each way in which the fire threatens it
 * @param reasons why it is graded so
 */
public record AtTheFire(
        String spell,
        FireGrade grade,
        double keepAwayM,
        String because,
        List<FireThreat> threats,
        List<FireReason> reasons) {

    public AtTheFire {
        threats = List.copyOf(threats);
        reasons = List.copyOf(reasons);
    }

    /** One for each spell with a fire, in their order. */
    static List<AtTheFire> of(FireJudgement judged) {
        return judged.spells().stream()
                .map(own -> of(own.spell(), hazardsIn(own.spell(), judged)))
                .toList();
    }

    private static List<FireHazard> hazardsIn(String spell, FireJudgement judged) {
        return Stream.concat(
                        judged.spells().stream(),
                        judged.parts().stream().flatMap(part -> part.judgement().spells().stream()))
                .filter(at -> at.spell().equals(spell))
                .map(SpellHazard::hazard)
                .toList();
    }

    private static AtTheFire of(String spell, List<FireHazard> hazards) {
        FireHazard worst = hazards.stream()
                .max(Comparator.comparingDouble(FireHazard::hazard))
                .orElseThrow();
        StandBack farthest = hazards.stream()
                .map(FireHazard::standBack)
                .max(Comparator.comparingDouble(StandBack::metres))
                .orElseThrow();
        return new AtTheFire(
                spell, worst.grade(), farthest.roundedUpM(), farthest.because(), worst.threats(), worst.reasons());
    }
}
