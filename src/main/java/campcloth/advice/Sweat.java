package campcloth.advice;

import campcloth.comfort.Reading.Value;
import campcloth.comfort.SpellComfort;

/** Whether a wearer can still get rid of heat by sweating. */
final class Sweat {

    /** Asked for more than can evaporate by this factor, it is no longer a matter of the model's error: project choice. */
    private static final double CLEARLY = 1.1;

    private Sweat() {}

    /** Whether sweat already drips off: the body then goes on heating up. */
    static boolean dripsOff(SpellComfort spell) {
        return share(spell) >= 1;
    }

    /** The same beyond what may be the model's error. */
    static boolean clearlyDripsOff(SpellComfort spell) {
        return share(spell) >= CLEARLY;
    }

    private static double share(SpellComfort spell) {
        double limit =
                spell.heat().wettednessLimit().inRange().map(Value::value).orElse(Double.POSITIVE_INFINITY);
        return spell.heat().wettednessAsked().inRange().map(Value::value).orElse(0.0) / limit;
    }
}
