package campcloth.advice;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;
import campcloth.event.Activity;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What an event asks of a cloth, each from 0 (not at all) to 1: the criteria take their weight from it, so that what does not
 * bite at an event does not dilute what does. Project choice.
 *
 * @param cold how much of the time more insulation is needed than light clothing gives
 * @param hot how much of the time sweating is more than comfortable
 * @param onSkin whether the cloth touches the skin
 * @param atFire whether there is a fire
 */
record Demands(double cold, double hot, boolean onSkin, boolean atFire) {

    private static final double LIGHT_CLOTHING_CLO = 0.6;
    private static final double WARM_CLOTHING_CLO = 2.0;
    private static final double COOL_RATIO = 0.4;
    private static final double HOT_RATIO = 1.0;
    private static final double COLD_AIR_C = 10;
    private static final double HOT_AIR_C = 30;

    static Demands of(Bounds bounds, boolean onSkin, boolean atFire) {
        return new Demands(mean(bounds.airy(), Demands::coldness), mean(bounds.airy(), Demands::heat), onSkin, atFire);
    }

    private static double coldness(SpellComfort spell) {
        return spell.needs()
                .neededClo()
                .inRange()
                .map(need -> share(need.value(), LIGHT_CLOTHING_CLO, WARM_CLOTHING_CLO))
                .orElse(spell.needs().spell().airC() <= COLD_AIR_C ? 1.0 : 0.0);
    }

    private static double heat(SpellComfort spell) {
        return spell.heat()
                .wettednessAsked()
                .inRange()
                .map(Value::value)
                .map(asked -> share(asked / spell.heat().wettednessCeiling(), COOL_RATIO, HOT_RATIO))
                .orElse(spell.needs().spell().airC() >= HOT_AIR_C ? 1.0 : 0.0);
    }

    private static double share(double value, double none, double full) {
        return Math.max(0, Math.min(1, (value - none) / (full - none)));
    }

    /** Over the hours awake: at night bedding decides. */
    private static double mean(List<SpellComfort> spells, ToDoubleFunction<SpellComfort> demand) {
        double hours = 0;
        double sum = 0;
        for (SpellComfort spell : spells) {
            if (spell.needs().spell().activity() != Activity.SLEEPING) {
                hours += spell.needs().spell().hours();
                sum += spell.needs().spell().hours() * demand.applyAsDouble(spell);
            }
        }
        return hours == 0 ? 0 : sum / hours;
    }
}
