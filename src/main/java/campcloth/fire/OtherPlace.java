package campcloth.fire;

import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.figure.Words;
import java.util.Optional;

/** Another place at the fires; the cloth and how it is worn stay. */
final class OtherPlace {

    private OtherPlace() {}

    /**
     * Stays this far from the fires that the wearer sits at or passes. Where hands come to the flame the distance of the body
     * makes no difference, so those fires stay as they are.
     *
     * @param metres from the fire's centre
     */
    record KeepDistance(double metres) implements Change {

        @Override
        public Kind kind() {
            return Kind.KEEP_DISTANCE;
        }

        @Override
        public String to() {
            return Words.fixed(metres, 1) + " m";
        }

        @Override
        public String todo(FireCase before) {
            return "Keep at least " + to() + " from the centre of every fire that you sit at or pass.";
        }

        @Override
        public FireCase in(FireCase before) {
            return before.withFires(
                    fire -> Exposure.handsAtTheFire(fire.role()) ? fire : moved(fire, fire.role(), metres));
        }

        static OpenFire moved(OpenFire fire, FireRole role, double metres) {
            double now = fire.distanceM().orElse(0.0);
            return new OpenFire(role, Optional.of(Math.max(now, metres)), fire.fireKw(), fire.kind());
        }
    }

    /**
     * Takes a place that is less exposed, at every fire where the present one is more so: somebody else does the work there.
     *
     * @param role what the wearer does instead
     * @param metres from the fire's centre
     */
    record StayOutOfReach(FireRole role, double metres) implements Change {

        @Override
        public Kind kind() {
            return Kind.STAY_OUT_OF_REACH;
        }

        @Override
        public String to() {
            return role + " at " + Words.fixed(metres, 1) + " m";
        }

        @Override
        public String todo(FireCase before) {
            boolean hands = before.fires().stream().anyMatch(f -> Exposure.handsAtTheFire(f.role()));
            String instead = role == FireRole.SEATED ? "sit" : "only pass by,";
            String place = " at least " + Words.fixed(metres, 1) + " m from the centre of the fire.";
            return hands
                    ? "Leave the work at the flame to somebody else, and " + instead + place
                            + " Standing further off at that work does not help: hands and sleeves come to the flame."
                    : "Do not sit down there: " + instead + place;
        }

        @Override
        public FireCase in(FireCase before) {
            return before.withFires(
                    fire -> fire.role().compareTo(role) > 0 ? KeepDistance.moved(fire, role, metres) : fire);
        }
    }
}
