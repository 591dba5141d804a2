package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.comfort.SpellComfort;
import campcloth.event.Event;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.WornCloth;
import java.util.List;

/**
 * Whether a cloth suits a season: in one garment, through the spells presumed for that season. It does where fire does not rule it
 * out there, no spell is hotter or colder in it than need be by the adviser's own cautions, it scores at least {@value #ENOUGH} of 100
 * for heat and, where the season asks more for warmth than for coolness, at least half as much for warmth as the closest cloth. Where
 * a score cannot be computed it suits. The thresholds are a project choice.
 */
final class SeasonSuit {

    private static final double ENOUGH = 50;
    private static final double SHARE_OF_CLOSEST = 0.5;

    private final Event event;
    private final Wear wear;
    private final FireAdvice fire;
    private final Comfort comfort;
    private final Bounds bounds;
    private final double leastWarmth;

    /** @param any any completed cloth: its own figures make no difference */
    SeasonSuit(Event event, Wear wear, FireAdvice fire, Cloth any) {
        this.event = event;
        this.wear = wear;
        this.fire = fire;
        this.comfort = Comfort.in(event.spells(), event.place());
        this.bounds = Bounds.of(comfort, any, wear);
        Demands demands = Demands.of(bounds, wear.nextToSkin(), false);
        this.leastWarmth = demands.cold() > demands.hot()
                ? SHARE_OF_CLOSEST * Warmth.score(bounds.close(), bounds).orElse(0)
                : 0;
    }

    /** @param completed a cloth with its gaps filled */
    boolean suits(Cloth completed) {
        return fire.reaches(WornCloth.of(completed, wear), event, Gate.CAUTION) && suits(comfort.of(completed, wear));
    }

    private boolean suits(List<SpellComfort> spells) {
        for (int i = 0; i < spells.size(); i++) {
            SpellComfort spell = spells.get(i);
            if (Warnings.isHotterThanNeedBe(spell, bounds.airy().get(i))
                    || Warnings.isColderThanNeedBe(spell, bounds.close().get(i))
                    || EventCautions.notComputed(spell).isPresent()) {
                return false;
            }
        }
        return Heat.score(spells, bounds).orElse(ENOUGH) >= ENOUGH
                && Warmth.score(spells, bounds).orElse(leastWarmth) >= leastWarmth;
    }

    /** What it is computed for. */
    @Override
    public String toString() {
        return event.season() + " " + event.spells() + " " + wear;
    }
}
