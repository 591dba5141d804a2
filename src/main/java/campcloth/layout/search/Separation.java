package campcloth.layout.search;

import java.util.SplittableRandom;

/**
 * Shortens a layout by overlaps that are let in and taken out again (guided overlap minimisation: J. Egeblad, B. K. Nielsen,
 * A. Odgaard 2007, "Fast neighborhood search for two- and three-dimensional nesting problems"; J. Gardeyn, G. Vanden Berghe,
 * T. Wauters 2025, arXiv 2509.13329): the strip is cut a little shorter, then items that overlap are moved, one after the
 * other, to spots of less weighted depth, while the weights of pairs that still overlap grow. Only layouts without any
 * overlap count.
 */
final class Separation {

    private static final double ROUND = 1e9;
    private static final double REACHED_CM = 1e-7;
    static double MOST_SHRINK = Double.parseDouble(System.getProperty("most", "0.02"));
    static double FIRST_SHRINK = Double.parseDouble(System.getProperty("first", "0.01"));
    static double LEAST_SHRINK = Double.parseDouble(System.getProperty("least", "0.001"));
    static int PATIENCE = Integer.getInteger("pat", 50);

    private final double lowerBound;
    private final Work work;
    private final SplittableRandom random;
    private final Overlaps overlaps;
    private final Overlaps best;
    private final Overlaps least;
    private final SpotSearch spots;
    private final int[] order;
    static int STRIKES = Integer.getInteger("strikes", 2);
    static double SQUEEZE_FROM = Double.parseDouble(System.getProperty("squeeze", "0.85")), EXPLORE_LEAST = Double.parseDouble(System.getProperty("eleast", "0.002"));
    private static final int POOL = 6;
    private final Overlaps[] pool = new Overlaps[POOL];
    private final double[] poolSum = new double[POOL];
    private int pooled;
    private double target;
    private double leastSum;
    private double bestLength;
    private double shrink = FIRST_SHRINK;
    long rounds, moves, tries, oks;

    Separation(double stripWidth, double lowerBound, ItemKinds kinds, ForbiddenSpots forbidden, Work work, long seed) {
        this.lowerBound = lowerBound;
        this.work = work;
        this.random = new SplittableRandom(seed);
        DepthTable depths = new DepthTable(kinds.shapes(), forbidden, work);
        overlaps = new Overlaps(kinds, depths);
        best = new Overlaps(kinds, depths);
        least = new Overlaps(kinds, depths);
        java.util.Arrays.setAll(pool, i -> new Overlaps(kinds, depths));
        spots = new SpotSearch(stripWidth, overlaps, depths, random);
        order = new int[kinds.items()];
    }

    void begin(StripPacking.Spot[] start) {
        best.read(start);
        bestLength = best.length();
        pooled = 0;
    }

    StripPacking.Spot[] best() {
        return best.spots();
    }

    double bestLength() {
        return bestLength;
    }

    /** Goes on until some part of the work is spent. */
    void search(double untilPart) {
        while (work.spentPart() < untilPart && !isDone()) {
            boolean squeezes = work.spentPart() >= SQUEEZE_FROM;
            double floor = squeezes ? LEAST_SHRINK : EXPLORE_LEAST;
            shrink = Math.max(floor, shrink);
            if (pooled == 0 || squeezes) {
                pooled = 0;
                target = Math.max(lowerBound, bestLength * (1 - shrink));
                overlaps.copyFrom(best);
                shorten(target);
            } else {
                double drawn = random.nextDouble();
                overlaps.copyFrom(pool[(int) (pooled * drawn * drawn)]);
                swapTwo();
                overlaps.measureAll();
            }
            if (separates(target, untilPart)) {
                best.copyFrom(overlaps);
                bestLength = best.length();
                oks++;
                shrink = Math.min(MOST_SHRINK, shrink * 1.5);
                pooled = 0;
            } else if (shrink > floor) {
                shrink = Math.max(floor, shrink / 2);
            } else {
                keepLeast();
            }
        }
    }

    /** Keeps the layout of least overlap of the last attempt among the few that later attempts go on from. */
    private void keepLeast() {
        int at = pooled == POOL ? POOL - 1 : pooled++;
        if (at == POOL - 1 && pool[at].sum() <= least.sum() && pooled == POOL && poolSum[at] <= leastSum && poolSum[at] > 0) {
            return;
        }
        Overlaps kept = pool[at];
        while (at > 0 && poolSum[at - 1] > leastSum) {
            pool[at] = pool[at - 1];
            poolSum[at] = poolSum[at - 1];
            at--;
        }
        kept.copyFrom(least);
        pool[at] = kept;
        poolSum[at] = leastSum;
    }

    private boolean isDone() {
        return bestLength <= lowerBound + REACHED_CM || work.isDone();
    }

    /** Moves what lies above a height down by what the strip is cut, and what sticks out into it. */
    private void shorten(double length) {
        double cut = Math.rint((bestLength - length) * ROUND) / ROUND;
        double above = random.nextDouble() * bestLength;
        for (int item = 0; item < overlaps.count; item++) {
            double height = overlaps.shape(item).height;
            double y = overlaps.y[item];
            if (y + height / 2 > above) {
                y -= cut;
            }
            overlaps.y[item] = Math.max(0, Math.min(y, Math.floor((length - height) * ROUND) / ROUND));
        }
        overlaps.measureAll();
    }

    private void swapTwo() {
        if (overlaps.count < 2) {
            return;
        }
        int one = large(-1);
        int other = large(one);
        for (int attempt = 0; attempt < 10 && overlaps.kinds.kind(one) == overlaps.kinds.kind(other); attempt++) {
            other = large(one);
        }
        double x = overlaps.x[one];
        double y = overlaps.y[one];
        put(one, overlaps.x[other], overlaps.y[other]);
        put(other, x, y);
    }

    /** One of the larger items: the largest of three drawn. */
    private int large(int not) {
        int largest = -1;
        for (int draw = 0; draw < 3 || largest < 0; draw++) {
            int item = random.nextInt(overlaps.count);
            if (item != not && (largest < 0 || overlaps.shape(item).area > overlaps.shape(largest).area)) {
                largest = item;
            }
        }
        return largest;
    }

    private void put(int item, double x, double y) {
        Shape shape = overlaps.shape(item);
        overlaps.x[item] = Math.max(0, Math.min(x, spots.roomFor(shape)));
        overlaps.y[item] = Math.max(0, Math.min(y, bestLength - shape.height));
    }

    /** Moves items until none overlaps, or until that comes no nearer. */
    private boolean separates(double length, double untilPart) {
        tries++;
        double start = overlaps.sum(); long r0 = rounds;
        overlaps.evenWeights();
        least.copyFrom(overlaps);
        leastSum = overlaps.sum();
        for (int strike = 0; strike < STRIKES && leastSum > 0; strike++) {
            double begun = leastSum;
            if (strike > 0) overlaps.copyFrom(least);
            int waited = 0;
            while (leastSum > 0 && waited < PATIENCE && work.spentPart() < untilPart && !work.isDone()) {
                rounds++;
                moveOverlapping(length);
                overlaps.weigh();
                double sum = overlaps.sum();
                waited++;
                if (sum < leastSum) {
                    waited = sum < 0.98 * leastSum ? 0 : waited;
                    leastSum = sum;
                    least.copyFrom(overlaps);
                }
            }
            if (leastSum < 0.98 * begun) strike = -1;
            if (work.spentPart() >= untilPart || work.isDone()) break;
        }
        if (Boolean.getBoolean("sep.trace")) System.out.printf("%s spent %.3f target %.3f start %.4f least %.5f rounds %d%n", Thread.currentThread().getName().substring(0,4), work.spentPart(), length, start, leastSum, rounds - r0);
        return leastSum == 0;
    }

    private void moveOverlapping(double length) {
        int size = 0;
        for (int item = 0; item < overlaps.count; item++) {
            if (overlaps.cost(item) > 0) {
                order[size++] = item;
            }
        }
        for (int i = size - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = order[i];
            order[i] = order[other];
            order[other] = kept;
        }
        for (int i = 0; i < size; i++) {
            if (overlaps.cost(order[i]) > 0) {
                moves += spots.improve(order[i], length) ? 1 : 0;
            }
        }
        work.spend((long) overlaps.count * overlaps.count / 4);
    }
}
