package campcloth.layout.search;

/**
 * Items on a strip of one length that may overlap, the depths of all pairs, and a weight for each pair, which grows while
 * the pair overlaps (guided local search, C. Voudouris, E. Tsang 1999, "Guided local search and its application to the
 * traveling salesman problem").
 */
final class Overlaps {

    private static final double LEAST_GROWTH = 1.2;
    private static final double MOST_GROWTH = 2.0;
    private static final double DECAY = 0.95;

    final int count;
    final ItemKinds kinds;
    final int[] way;
    final double[] x;
    final double[] y;
    final double[] weight;
    /** Least weights: large pairs weigh more, so that small items give way to large ones. */
    private final double[] base;

    private final double[] depth;
    private final DepthTable depths;

    Overlaps(ItemKinds kinds, DepthTable depths) {
        this.kinds = kinds;
        this.depths = depths;
        count = kinds.items();
        way = new int[count];
        x = new double[count];
        y = new double[count];
        weight = new double[count * count];
        depth = new double[count * count];
        base = new double[count * count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                base[i * count + j] = Math.sqrt(kinds.shape(i, 0).area * kinds.shape(j, 0).area);
            }
        }
        evenWeights();
    }

    Shape shape(int item) {
        return kinds.shape(item, way[item]);
    }

    void copyFrom(Overlaps other) {
        System.arraycopy(other.way, 0, way, 0, count);
        System.arraycopy(other.x, 0, x, 0, count);
        System.arraycopy(other.y, 0, y, 0, count);
        System.arraycopy(other.depth, 0, depth, 0, depth.length);
    }

    void evenWeights() {
        System.arraycopy(base, 0, weight, 0, base.length);
    }

    void move(int item, int toWay, double toX, double toY) {
        way[item] = toWay;
        x[item] = toX;
        y[item] = toY;
        measure(item);
    }

    void measureAll() {
        for (int item = 0; item < count; item++) {
            measure(item);
        }
    }

    private void measure(int item) {
        Shape shape = shape(item);
        for (int other = 0; other < count; other++) {
            if (other != item) {
                double deep = depths.of(shape(other), shape).at(x[item] - x[other], y[item] - y[other]);
                depth[item * count + other] = deep;
                depth[other * count + item] = deep;
            }
        }
        depths.work().spend(2L * count);
    }

    /** Sum of the depths of all pairs at their least weights; 0 where the items are apart. */
    double sum() {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < i; j++) {
                sum += base[i * count + j] * depth[i * count + j];
            }
        }
        return sum;
    }

    /** Weighted sum of the depths of the pairs of an item. */
    double cost(int item) {
        double cost = 0;
        for (int other = 0; other < count; other++) {
            cost += weight[item * count + other] * depth[item * count + other];
        }
        return cost;
    }

    /** Raises the weights of pairs that overlap, the deepest most, and lets the others fall back to their least. */
    void weigh() {
        double most = 0;
        for (double deep : depth) {
            most = Math.max(most, deep);
        }
        for (int pair = 0; pair < depth.length; pair++) {
            if (depth[pair] > 0) {
                weight[pair] *= LEAST_GROWTH + (MOST_GROWTH - LEAST_GROWTH) * depth[pair] / most;
            } else {
                weight[pair] = Math.max(base[pair], weight[pair] * DECAY);
            }
        }
        depths.work().spend((long) count * count / 4);
    }

    double length() {
        double length = 0;
        for (int i = 0; i < count; i++) {
            length = Math.max(length, y[i] + shape(i).height);
        }
        return length;
    }

    void read(StripPacking.Spot[] spots) {
        for (int item = 0; item < count; item++) {
            way[item] = kinds.wayOfGiven(item, spots[item].way());
            x[item] = spots[item].x();
            y[item] = spots[item].y();
        }
        measureAll();
    }

    StripPacking.Spot[] spots() {
        StripPacking.Spot[] spots = new StripPacking.Spot[count];
        for (int item = 0; item < count; item++) {
            spots[item] = new StripPacking.Spot(kinds.givenWay(item, way[item]), x[item], y[item]);
        }
        return spots;
    }
}
