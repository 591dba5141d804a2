package campcloth.fire;

/**
 * One way in which a fire threatens a cloth, apart from the others.
 *
 * @param kind which way
 * @param text what it is here, for this cloth in this place
 */
public record FireThreat(Kind kind, String text) {

    /** The ways, each with its own remedy. */
    public enum Kind {
        /** A steady fire warms the cloth. */
        RADIANT_HEAT,
        /** Sleeves, hems or hands come to the flame. */
        FLAME_CONTACT,
        /** A gust, fat or fuel makes more heat than the steady fire. */
        FLARE_UP,
        /** Sparks and embers land on it. */
        SPARKS
    }
}
