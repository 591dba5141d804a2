package campcloth.advice;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;

/** Whether a wearer can still get rid of heat by sweating. */
final class Wettest {

    private static final double NEARLY = 0.995;

    private Wettest() {}

    /** Whether sweat already drips off: the body then goes on heating up. */
    static boolean reached(SpellComfort spell) {
        double limit =
                spell.heat().wettednessLimit().inRange().map(Value::value).orElse(Double.POSITIVE_INFINITY);
        return spell.heat().wettedness().inRange().map(Value::value).orElse(0.0) >= NEARLY * limit;
    }
}
