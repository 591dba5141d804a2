package campcloth.event;

/** What is over the wearer, where it matters for the cold of the sky. */
public enum Shelter {
    OPEN,
    TREES_OR_TENT
}
