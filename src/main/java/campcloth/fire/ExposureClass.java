package campcloth.fire;

/** What of a fire reaches the wearer, from least to most. */
public enum ExposureClass {
    /** No fire, or no place at it. */
    NONE,
    /** Sparks downwind. */
    SPARKS,
    /** Radiant heat and sparks. */
    RADIANT,
    /** Sleeves, hems or hands come to the flame. */
    CONTACT,
    /** More radiant heat than a person can bear for some seconds. */
    UNBEARABLE;

    boolean atLeast(ExposureClass other) {
        return compareTo(other) >= 0;
    }
}
