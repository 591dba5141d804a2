package campcloth.layout.search;

import java.util.SplittableRandom;

/**
 * Looks for a spot of less cost for one item among the others as they lie: spots drawn over the whole strip and about the
 * present one, for all ways; the best few go down to a local least.
 */
final class SpotSearch {

    private static final int STARTS = 3;
    private static final int OVER_STRIP = 20;
    private static final int NEARBY = 10;

    private final double stripWidth;
    private final Overlaps overlaps;
    private final SpotCosts costs;
    private final Descent descent;
    private final SplittableRandom random;

    private final int[] startWay = new int[STARTS];
    private final double[] startCost = new double[STARTS];
    private final double[] startX = new double[STARTS];
    private final double[] startY = new double[STARTS];
    private int starts;

    SpotSearch(double stripWidth, Overlaps overlaps, DepthTable depths, SplittableRandom random) {
        this.stripWidth = stripWidth;
        this.overlaps = overlaps;
        this.random = random;
        costs = new SpotCosts(stripWidth, overlaps, depths);
        descent = new Descent(costs);
    }

    /** Moves an item to a spot of less cost on a strip of some length, where one is found. */
    void improve(int item, double length) {
        starts = 0;
        for (int way = 0; way < overlaps.kinds.ways(item); way++) {
            if (costs.prepare(item, way, length)) {
                draw(item, overlaps.kinds.shape(item, way));
            }
        }
        double bestCost = overlaps.cost(item);
        int bestWay = -1;
        double bestX = 0;
        double bestY = 0;
        for (int i = 0; i < starts && bestCost > 0; i++) {
            costs.look(startWay[i]);
            descent.from(startX[i], startY[i], startCost[i]);
            if (descent.cost() < bestCost) {
                bestCost = descent.cost();
                bestWay = startWay[i];
                bestX = descent.x();
                bestY = descent.y();
            }
        }
        if (bestWay >= 0) {
            overlaps.move(item, bestWay, bestX, bestY);
        }
    }

    /** Draws spots for the shape an item has in the way looked at. */
    private void draw(int item, Shape shape) {
        Shape present = overlaps.shape(item);
        double x = between(overlaps.x[item] + (present.width - shape.width) / 2, costs.room());
        double y = between(overlaps.y[item] + (present.height - shape.height) / 2, costs.height());
        consider(x, y);
        for (int i = 0; i < OVER_STRIP; i++) {
            consider(random.nextDouble() * costs.room(), random.nextDouble() * costs.height());
        }
        for (int i = 0; i < NEARBY; i++) {
            consider(
                    between(x + (random.nextDouble() - 0.5) * shape.width, costs.room()),
                    between(y + (random.nextDouble() - 0.5) * shape.height, costs.height()));
        }
    }

    private static double between(double value, double most) {
        return Math.max(0, Math.min(most, value));
    }

    /** Keeps a spot where it is among the best so far. */
    private void consider(double x, double y) {
        double limit = starts == STARTS ? startCost[STARTS - 1] : Double.POSITIVE_INFINITY;
        double cost = costs.at(x, y, limit);
        if (cost >= limit) {
            return;
        }
        int at = starts == STARTS ? STARTS - 1 : starts++;
        while (at > 0 && startCost[at - 1] > cost) {
            startCost[at] = startCost[at - 1];
            startWay[at] = startWay[at - 1];
            startX[at] = startX[at - 1];
            startY[at] = startY[at - 1];
            at--;
        }
        startCost[at] = cost;
        startWay[at] = costs.way();
        startX[at] = x;
        startY[at] = y;
    }

    /** Puts two items each in the place of the other, as far as the strip allows. */
    void exchange(int one, int other, double length) {
        double x = overlaps.x[one];
        double y = overlaps.y[one];
        put(one, overlaps.x[other], overlaps.y[other], length);
        put(other, x, y, length);
    }

    private void put(int item, double x, double y, double length) {
        Shape shape = overlaps.shape(item);
        overlaps.move(
                item,
                overlaps.way[item],
                between(x, Math.max(0, stripWidth - shape.width)),
                between(y, length - shape.height));
    }
}
