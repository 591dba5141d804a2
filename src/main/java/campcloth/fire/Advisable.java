package campcloth.fire;

import campcloth.event.FireRole;
import campcloth.fibre.FibreFamily;
import campcloth.fire.model.Melt;
import campcloth.fire.model.Spread;
import java.util.List;

/**
 * Whether changes may be advised at all, whatever verdict they come to. No place nearer than the distance to keep in what is worn
 * there. No light cloth of plant fibre with fibre that melts, which research advises against ({@link Behaviours}). Where another
 * blend is named, none with more than a little that melts, none whose plant fibre holds a melt, none with acrylic by
 * {@link Behaviours#LEAST_PERCENT} % or more: project choice, though the grade may be better than before.
 */
final class Advisable {

    private static final double ROUNDING = 1e-9;

    private Advisable() {}

    /**
     * @param before the case as it is
     * @param then the case after the changes
     * @param judged the judgement of that
     */
    static boolean are(List<Change> changes, FireCase before, FireCase then, FireJudgement judged) {
        return changes.stream().allMatch(change -> switch (change.kind()) {
            case KEEP_DISTANCE -> keepsBack(before, judged, FireRole.NONE);
            case STAY_OUT_OF_REACH -> keepsBack(before, judged, ((OtherPlace.StayOutOfReach) change).role());
            case NO_FILM, PLAIN_SURFACE, HEAVIER -> !Behaviours.isLightAndHoldsMelt(then.cloth());
            case OTHER_BLEND -> isGoodBlend(then.cloth());
            case OTHER_LAYER, OTHER_PART, CLOSE_FIT -> true;
        });
    }

    /** Whether at each fire with a riskier role than that before, the wearer now keeps the distance of all that is judged. */
    private static boolean keepsBack(FireCase before, FireJudgement then, FireRole than) {
        for (int i = 0; i < then.spells().size(); i++) {
            boolean moves = before.fires().get(i).role().compareTo(than) > 0;
            if (moves && !keepsBack(then.spells().get(i), then, i)) {
                return false;
            }
        }
        return true;
    }

    private static boolean keepsBack(SpellHazard spell, FireJudgement then, int number) {
        if (Exposure.handsAtTheFire(spell.exposure().role())) {
            return true;
        }
        double metres = spell.exposure().distanceOrPresumedM() + ROUNDING;
        return spell.hazard().standBackM() <= metres
                && then.parts().stream()
                        .allMatch(part ->
                                part.judgement().spells().get(number).hazard().standBackM() <= metres);
    }

    private static boolean isGoodBlend(WornCloth cloth) {
        double melting = cloth.blend().meltablePercent();
        boolean holds = isAtLeast(melting, Spread.SCAFFOLD_PERCENT)
                && isAtLeast(cloth.blend().percentOf(FibreFamily.CELLULOSIC), Spread.SCAFFOLD_PERCENT);
        return melting <= Melt.LITTLE_PERCENT + ROUNDING
                && !holds
                && !isAtLeast(cloth.blend().percentOf("acrylic"), Behaviours.LEAST_PERCENT);
    }

    private static boolean isAtLeast(double percent, double limit) {
        return percent >= limit - ROUNDING;
    }
}
