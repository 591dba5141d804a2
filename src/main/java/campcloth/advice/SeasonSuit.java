package campcloth.advice;

import campcloth.cloth.Cloth;
import campcloth.cloth.Prickle;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.event.Event;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireJudgement;
import java.util.List;
import java.util.Set;

/**
 * Whether a cloth suits a season: in a garment worn over a shirt, through the spells presumed for that season. It does where fire
 * does not rule it out there, no spell brings a caution of cold or heat that another cloth would spare, it scores at least
 * {@value #ENOUGH} of 100 for heat and, where the season asks more for warmth than for coolness, at least half as much for warmth
 * as the closest cloth. The thresholds are a project choice.
 */
final class SeasonSuit {

    private static final double ENOUGH = 50;
    private static final double SHARE_OF_CLOSEST = 0.5;
    private static final Set<String> OF_WEATHER = Set.of("COLD", "HEAT_STRAIN", "OUT_OF_MODEL");
    private static final Warmth WARMTH = new Warmth();
    private static final Heat HEAT = new Heat();

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
        Facts closest = new Facts(
                any,
                wear,
                comfort.ensembles(any, wear),
                bounds.close(),
                fire.judge(any, wear, event),
                Prickle.of(any),
                bounds);
        this.leastWarmth = demands.cold() > demands.hot()
                ? SHARE_OF_CLOSEST * WARMTH.assess(closest).score()
                : 0;
    }

    /** @param completed a cloth with its gaps filled */
    boolean suits(Cloth completed) {
        FireJudgement atFire = fire.judge(completed, wear, event);
        if (atFire.gate() == FireJudgement.Gate.RULED_OUT) {
            return false;
        }
        Facts facts = new Facts(
                completed,
                wear,
                comfort.ensembles(completed, wear),
                comfort.of(completed, wear),
                atFire,
                Prickle.of(completed),
                bounds);
        return Warnings.of(facts, List.of()).stream().noneMatch(SeasonSuit::isCautionOfWeather)
                && HEAT.assess(facts).score() >= ENOUGH
                && WARMTH.assess(facts).score() >= leastWarmth;
    }

    /** What it is computed for. */
    @Override
    public String toString() {
        return event.season() + " " + event.spells() + " " + wear;
    }

    private static boolean isCautionOfWeather(Warning warning) {
        return OF_WEATHER.contains(warning.code()) && warning.severity() != Warning.Severity.NOTE;
    }
}
