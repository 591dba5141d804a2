package campcloth.event;

/** How much of the sun reaches the wearer. */
public enum Sun {
    FULL,
    PART,
    NONE
}
