package campcloth.errand;

import campcloth.fire.FireGrade;
import campcloth.fire.FireReason;
import campcloth.fire.FireThreat;
import campcloth.fire.SpellHazard;
import java.util.List;

/**
 * How the cloth stands at one fire.
 *
 * @param spell name of the spell
 * @param grade quarter of the hazard
 * @param keepAwayM distance to keep from the fire's centre, m, rounded up to a tenth: an estimate for a steady fire
 * @param because what sets that distance, with its margin
 * @param threats each way in which the fire threatens it
 * @param reasons why it is graded so, each with its source
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

    static AtTheFire of(SpellHazard at) {
        return new AtTheFire(
                at.spell(),
                at.hazard().grade(),
                Math.ceil(at.hazard().standBackM() * 10 - ROUNDING) / 10,
                at.hazard().standBack().because(),
                at.hazard().threats(),
                at.hazard().reasons());
    }

    private static final double ROUNDING = 1e-9;
}
