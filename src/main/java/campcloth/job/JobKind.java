package campcloth.job;

/** What kinds of work are handed in. */
public enum JobKind {
    /** Outlines laid on a width of cloth. */
    LAYOUT,
    /** A plan of what to buy and how to cut it, kept when it is done. */
    CUTTING_PLAN,
    /** A supplier's list looked at or taken over. */
    LIST
}
