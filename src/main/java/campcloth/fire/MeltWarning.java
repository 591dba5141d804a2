package campcloth.fire;

/** How strongly to warn of melting, beside the grade and apart from it. */
public enum MeltWarning {
    /** Nothing melts, or there is no fire. */
    NONE,
    /** Something melts; the fire is far. */
    NOTE,
    /** Something melts and heat or flame can reach it. */
    WARN,
    /** Much of it melts and it can touch flame. */
    STOP
}
