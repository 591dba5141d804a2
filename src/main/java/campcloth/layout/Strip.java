package campcloth.layout;

import campcloth.figure.Range;

/**
 * A strip of cloth of given width and as long as is needed.
 *
 * @param widthCm usable width, selvedges left out
 * @param gapCm free distance between any two pieces, measured along and across the cloth (a square of that half-side
 *     round each point stays clear, so the straight distance is never less); none is kept from the edges of the cloth
 */
public record Strip(double widthCm, double gapCm) {

    private static final Range WIDTH = new Range("widthCm", 0.1, 100_000, "cm");
    private static final Range GAP = new Range("gapCm", 0, 100, "cm");

    public Strip {
        WIDTH.check(widthCm);
        GAP.check(gapCm);
    }

    /** A strip on which pieces may touch. */
    public static Strip ofWidth(double widthCm) {
        return new Strip(widthCm, 0);
    }
}
