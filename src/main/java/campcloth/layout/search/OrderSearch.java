package campcloth.layout.search;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Searches orders for one that takes little length: the start orders, then all orders of the kinds where they are few, then
 * simulated annealing over neighbours (S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi 1983, "Optimization by simulated
 * annealing") until the work is spent or the lower bound is reached. A neighbour too long to be accepted is given up as soon
 * as that is known.
 */
final class OrderSearch {

    private static final long MOST_PERMUTATIONS = 6000;
    private static final double MEAN_HEIGHT_WEIGHT = 0.3;
    private static final double REACHED_CM = 1e-7;
    /** Temperatures as parts of the length: the first falls with the number of items. */
    private static final double HOT_OF_ONE = 0.3;

    private static final double HOT_LEAST = 0.004;
    private static final double HOT_MOST = 0.05;
    private static final double COLD = 0.0002;
    /** More coolings the fewer the items. */
    private static final int ITEMS_COOLED = 120;

    private static final int MOST_ROUNDS = 12;
    private static final int ROUNDS_TO_SHUFFLE = 6;

    private final ItemKinds kinds;
    private final Filling filling;
    private final StartOrders starts;
    private final Work work;
    private final double share;
    private final double lowerBound;
    private final SplittableRandom random;

    private double bestLength = Double.POSITIVE_INFINITY;
    private double bestCost = Double.POSITIVE_INFINITY;
    private StripPacking.Spot[] best = new StripPacking.Spot[0];
    private Order bestOrder;

    /** A search of all the work. */
    OrderSearch(double stripWidth, double gap, double lowerBound, ItemKinds kinds, Work work, long seed) {
        this(stripWidth, new ForbiddenSpots(kinds.shapes(), gap, work), lowerBound, kinds, work, 1, seed);
    }

    /** A search that ends when some share of the work is spent. */
    OrderSearch(
            double stripWidth,
            ForbiddenSpots forbidden,
            double lowerBound,
            ItemKinds kinds,
            Work work,
            double share,
            long seed) {
        this.kinds = kinds;
        this.work = work;
        this.share = share;
        this.lowerBound = lowerBound;
        this.filling = new Filling(stripWidth, forbidden, kinds, work);
        this.starts = new StartOrders(kinds, stripWidth);
        this.random = new SplittableRandom(seed);
        this.bestOrder = starts.all().get(0);
    }

    StripPacking.Spot[] best() {
        for (Order start : starts.all()) {
            if (best.length == 0 || !isDone()) {
                cost(start, Double.POSITIVE_INFINITY);
            }
        }
        tryPermutations();
        int rounds = Math.max(2, Math.min(MOST_ROUNDS, ITEMS_COOLED / kinds.items() & ~1));
        for (int left = rounds; left > 0 && !isDone() && kinds.items() > 1; left--) {
            anneal(left, rounds >= ROUNDS_TO_SHUFFLE && left % 2 == 1);
        }
        return best;
    }

    private boolean isDone() {
        return bestLength <= lowerBound + REACHED_CM || work.spentPart() >= share || work.isDone();
    }

    /** What an order costs: its length and a little for lying high; infinite where that is over the limit. */
    private double cost(Order order, double limit) {
        double length = filling.length(order, limit);
        if (Double.isInfinite(length)) {
            return length;
        }
        double cost = length + MEAN_HEIGHT_WEIGHT * filling.meanHeight();
        if (length < bestLength || length == bestLength && cost < bestCost) {
            bestLength = length;
            bestCost = cost;
            best = filling.spots();
            work.found(length);
            bestOrder = order.copy();
        }
        return cost;
    }

    private void tryPermutations() {
        if (starts.permutations(MOST_PERMUTATIONS) >= MOST_PERMUTATIONS) {
            return;
        }
        for (Order.Rule rule : Order.Rule.values()) {
            Order order = bestOrder.copy();
            order.rule = rule;
            Arrays.setAll(order.items, item -> item);
            int[] sorted = Arrays.stream(order.items)
                    .boxed()
                    .sorted((a, b) -> Integer.compare(kinds.kind(a), kinds.kind(b)))
                    .mapToInt(Integer::intValue)
                    .toArray();
            System.arraycopy(sorted, 0, order.items, 0, sorted.length);
            do {
                cost(order, bestLength);
            } while (!isDone() && starts.next(order.items));
        }
    }

    /** One cooling, from the best order or from any. */
    private void anneal(int roundsLeft, boolean shuffled) {
        Order current = bestOrder.copy();
        if (shuffled) {
            current.shuffle(random);
        }
        double currentCost = cost(current, Double.POSITIVE_INFINITY);
        double begun = work.spentPart();
        double span = (share - begun) / roundsLeft;
        double hot = Math.max(HOT_LEAST, Math.min(HOT_MOST, HOT_OF_ONE / kinds.items()));
        while (!isDone() && work.spentPart() < begun + span) {
            double part = (work.spentPart() - begun) / span;
            double temperature = bestLength * hot * Math.pow(COLD / hot, part);
            double limit = currentCost - temperature * Math.log(1 - random.nextDouble());
            Order varied = current.varied(random, kinds);
            double cost = cost(varied, limit);
            if (cost <= limit) {
                current = varied;
                currentCost = cost;
            }
            work.spend(kinds.items());
        }
    }
}
