package campcloth.event;

/** What the wearer does at a fire, from least to most exposed. */
public enum FireRole {
    NONE,
    /** Walks by, more than 3 m away. */
    PASSING,
    /** Sits by it, 1.5 to 3 m away; farther off it counts as passing. */
    SEATED,
    COOKING,
    TENDING,
    /** Carries a torch or a lantern with a flame. */
    CARRYING
}
