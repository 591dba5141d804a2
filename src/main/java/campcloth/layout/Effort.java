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

    private static final Range SECONDS = new Range("seconds", 0.01, 30, "s");

    public Effort {
        SECONDS.check(seconds);
    }
}
