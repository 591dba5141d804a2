package campcloth.event;

/** What the wearer does at a fire, from least to most exposed. */
public enum FireRole {
    NONE,
    /** Walks by, more than 3 m away. */
    PASSING,
    /** Sits 1.5 to 3 m away. */
    SEATED,
    COOKING,
    TENDING,
    /** Carries a torch or a lantern with a flame. */
    CARRYING
}
