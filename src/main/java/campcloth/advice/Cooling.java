package campcloth.advice;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;

/** Whether a wearer cools down before a spell is over. */
final class Cooling {

    /** ISO 11079 reckons no longer than a shift. */
    private static final double LONGEST_HOURS = 8;

    private Cooling() {}

    static boolean tooSoon(SpellComfort spell) {
        double hours =
                spell.warmth().hoursUntilCooling().inRange().map(Value::value).orElse(Double.POSITIVE_INFINITY);
        return hours < Math.min(LONGEST_HOURS, spell.needs().spell().hours());
    }
}
