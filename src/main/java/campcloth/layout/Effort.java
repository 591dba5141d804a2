package campcloth.layout;

import campcloth.figure.Range;

/**
 * How long to look for a short layout. The search is paid in counted steps, so many to a second of an ordinary machine, so
 * that the same request gives the same layout; the clock only stops it at twice the seconds, or two seconds over them where
 * that is later.
 *
 * @param seconds time the search may take, about
 * @param seed start of the random choices
 */
public record Effort(double seconds, long seed) {

    /** The least and the most that any search may take. */
    private static final Range SECONDS = new Range("seconds", 0.01, 120, "s");

    /** What a search may take for whose end somebody waits. */
    private static final Range WHILE_SOMEBODY_WAITS = new Range("seconds", 0.01, 30, "s");

    public Effort {
        SECONDS.check(seconds);
    }

    /** An effort for whose end somebody waits. */
    public static Effort waitedFor(double seconds, long seed) {
        return new Effort(WHILE_SOMEBODY_WAITS.check(seconds), seed);
    }
}
