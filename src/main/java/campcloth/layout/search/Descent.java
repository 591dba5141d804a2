package campcloth.layout.search;

/**
 * Goes from a spot down to a local least of the cost. Within one part of every no-fit polygon that holds the spot the cost
 * is concave, so its least values lie where two edges cross: each step tries the ways out over the edges of what the item
 * overlaps, and where such edges cross each other, those of the spot before and the edges of the strip.
 */
final class Descent {

    private static final int MOST_LINES = 8;
    private static final int MOST_STEPS = 12;
    private static final double LEAST_GAIN = 1e-6;
    private static final double ALONG = 1e-3;
    /** Spots are rounded to this part of a cm, within what counts as touching. */
    private static final double ROUND = 1e9;

    private final SpotCosts costs;
    /** Lines, three numbers each: those of this spot, then those of the one before. */
    private final double[] lines = new double[6 * MOST_LINES];

    private int newLines;
    private int allLines;
    private double x;
    private double y;
    private double cost;

    Descent(SpotCosts costs) {
        this.costs = costs;
    }

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    double cost() {
        return cost;
    }

    void from(double fromX, double fromY, double fromCost) {
        x = fromX;
        y = fromY;
        cost = fromCost;
        newLines = 0;
        double before = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS && cost > 0 && cost < before * (1 - LEAST_GAIN); step++) {
            before = cost;
            gatherLines();
            tryWaysOut();
        }
    }

    private void gatherLines() {
        int kept = newLines;
        System.arraycopy(lines, 0, lines, 3 * MOST_LINES, 3 * kept);
        newLines = costs.waysOut(x, y, lines, MOST_LINES);
        System.arraycopy(lines, 3 * MOST_LINES, lines, 3 * newLines, 3 * kept);
        allLines = newLines + kept;
    }

    private void tryWaysOut() {
        double fromX = x;
        double fromY = y;
        for (int i = 0; i < newLines; i++) {
            double normalX = lines[3 * i];
            double normalY = lines[3 * i + 1];
            double reach = lines[3 * i + 2];
            double deep = reach - normalX * fromX - normalY * fromY;
            tryAt(fromX + deep * normalX, fromY + deep * normalY);
            tryOnEdges(normalX, normalY, reach, fromX, fromY);
            for (int j = i + 1; j < allLines; j++) {
                tryCrossing(normalX, normalY, reach, lines[3 * j], lines[3 * j + 1], lines[3 * j + 2]);
            }
        }
    }

    /** Where a line meets the nearer edges of the room for spots. */
    private void tryOnEdges(double normalX, double normalY, double reach, double fromX, double fromY) {
        tryCrossing(normalX, normalY, reach, 1, 0, fromX < costs.room() / 2 ? 0 : costs.room());
        tryCrossing(normalX, normalY, reach, 0, 1, fromY < costs.height() / 2 ? 0 : costs.height());
    }

    private void tryCrossing(
            double normalX, double normalY, double reach, double otherX, double otherY, double otherReach) {
        double sine = normalX * otherY - normalY * otherX;
        if (Math.abs(sine) > ALONG) {
            tryAt((reach * otherY - normalY * otherReach) / sine, (normalX * otherReach - otherX * reach) / sine);
        }
    }

    private void tryAt(double atX, double atY) {
        double roundX = Math.rint(atX * ROUND) / ROUND;
        double roundY = Math.rint(atY * ROUND) / ROUND;
        if (roundX >= 0 && roundX <= costs.room() && roundY >= 0 && roundY <= costs.height()) {
            double there = costs.at(roundX, roundY, cost);
            if (there < cost) {
                cost = there;
                x = roundX;
                y = roundY;
            }
        }
    }
}
