package campcloth.errand;

import campcloth.cloth.Outfit;
import java.util.Optional;

/**
 * Whether the garment's cloth touches the skin: as somebody said; else not where something is told to lie beneath; else as is
 * presumed.
 *
 * @param said what somebody said
 * @param outfit what else is worn or sewn in
 * @param cold whether people wear more than one layer
 */
record SkinSide(Optional<Boolean> said, Outfit outfit, boolean cold) {

    /** For warmth, heat and itch. */
    boolean touches() {
        return said.orElse(!outfit.liesBeneath() && !cold);
    }

    /** For fire: the skin wherever nobody said otherwise. */
    boolean touchesAtFire() {
        return said.orElse(!outfit.liesBeneath());
    }

    /** What was presumed, or taken against what else was told. */
    Optional<String> sentence() {
        if (said.isPresent()) {
            return said.get() && outfit.liesBeneath()
                    ? Optional.of(
                            "It is said to touch the skin although something lies beneath it: it was judged as touching the"
                                    + " skin, the worse case.")
                    : Optional.empty();
        }
        if (outfit.liesBeneath()) {
            return Optional.of(
                    "Nobody said whether it touches the skin: something is told to lie beneath it, so it was judged as"
                            + " if it does not.");
        }
        return Optional.of(
                cold
                        ? "Nobody said whether it touches the skin: in such cold it was presumed over a shirt, at the fire it was"
                                + " judged as if it touches the skin."
                        : "Nobody said whether it touches the skin: it was judged as if it does.");
    }
}
