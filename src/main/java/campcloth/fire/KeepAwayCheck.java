package campcloth.fire;

import campcloth.event.OpenFire;
import campcloth.figure.Words;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.List;

/**
 * The distance that a wearer must keep from a fire. It is about the place, so no cloth mends it. A distance that nobody told
 * counts as nothing, and hands at the fire are nearer than any.
 */
final class KeepAwayCheck {

    private KeepAwayCheck() {}

    /** @param fires the fires that the rule is about */
    static Finding finding(double leastM, List<OpenFire> fires) {
        String keep = " At least " + Words.number(leastM) + " m must be kept: that is about the place, not the cloth.";
        if (fires.isEmpty()) {
            return new Finding(Outcome.NOT_IN_REACH, "No open fire was stated." + keep);
        }
        return Finding.strictest(fires.stream()
                .map(fire -> finding(leastM, fire, keep))
                .distinct()
                .toList());
    }

    private static Finding finding(double leastM, OpenFire fire, String keep) {
        if (Exposure.handsAtTheFire(fire.role())) {
            return Finding.forbidden("Hands and sleeves come to the fire." + keep);
        }
        if (fire.distanceM().isEmpty()) {
            return Finding.forbidden("Nobody told the distance to the fire." + keep);
        }
        double metres = fire.distanceM().get();
        String place = "The wearer is " + Words.number(metres) + " m away, as told.";
        return metres < leastM ? Finding.forbidden(place + keep) : Finding.passed(place + keep);
    }
}
