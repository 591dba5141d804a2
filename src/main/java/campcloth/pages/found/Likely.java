package campcloth.pages.found;

import campcloth.fibre.FlameKey;

/** A probability in a word; the bounds below the key's own are choices of this page. */
public enum Likely {
    /** From {@link FlameKey#CLASS_FROM} on. */
    LIKELY,
    /** From 10 % on. */
    POSSIBLE,
    /** From 2 % on. */
    UNLIKELY,
    HARDLY;

    private static final double POSSIBLE_FROM = 0.10;
    private static final double UNLIKELY_FROM = 0.02;

    /** @param probability 0 to 1 */
    public static Likely of(double probability) {
        if (probability >= FlameKey.CLASS_FROM) {
            return LIKELY;
        }
        if (probability >= POSSIBLE_FROM) {
            return POSSIBLE;
        }
        return probability >= UNLIKELY_FROM ? UNLIKELY : HARDLY;
    }
}
