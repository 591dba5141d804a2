package campcloth.layout.search;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Shortens a layout by overlaps that are let in and taken out again (guided overlap minimisation: J. Egeblad, B. K. Nielsen,
 * A. Odgaard 2007, "Fast neighborhood search for two- and three-dimensional nesting problems"; J. Gardeyn, G. Vanden Berghe,
 * T. Wauters 2025, arXiv 2509.13329): the strip is cut a little shorter, then items that overlap are moved, one after the
 * other, to spots of less weighted depth, while the weights of pairs that still overlap grow. An attempt that fails leaves
 * its layout of least overlap to a pool; later attempts exchange two large items in one of these. The last part of the work
 * goes to small cuts. Only layouts without any overlap count.
 */
final class Separation {

    private static final double ROUND = 1e9;
    private static final double REACHED_CM = 1e-7;
    /** Parts of the length that are cut off at once. */
    private static final double MOST_CUT = 0.02;

    private static final double FIRST_CUT = 0.01;
    private static final double LEAST_CUT = 0.004;
    private static final double LEAST_CUT_AT_LAST = 0.001;
    /** Part of the work after which only small cuts are tried. */
    private static final double AT_LAST = 0.85;

    private static final double FASTER = 1.5;
    private static final int PATIENCE = 50;
    private static final double GAIN = 0.98;
    private static final int STRIKES = 2;
    private static final int POOL = 6;

    private final double lowerBound;
    private final Work work;
    private final SplittableRandom random;
    private final Overlaps overlaps;
    private final Overlaps best;
    private final Overlaps least;
    private final Overlaps[] pool = new Overlaps[POOL];
    private final SpotSearch spots;
    private final int[] order;
    private int pooled;
    private double target;
    private double bestLength = Double.POSITIVE_INFINITY;
    private double cut = FIRST_CUT;

    Separation(double stripWidth, double lowerBound, ItemKinds kinds, ForbiddenSpots forbidden, Work work, long seed) {
        this.lowerBound = lowerBound;
        this.work = work;
        this.random = new SplittableRandom(seed);
        DepthTable depths = new DepthTable(kinds.shapes(), forbidden, work);
        overlaps = new Overlaps(kinds, depths);
        best = new Overlaps(kinds, depths);
        least = new Overlaps(kinds, depths);
        Arrays.setAll(pool, i -> new Overlaps(kinds, depths));
        spots = new SpotSearch(stripWidth, overlaps, depths, random);
        order = new int[kinds.items()];
    }

    /** Goes on from a layout without overlap. */
    void begin(StripPacking.Spot[] start) {
        best.read(start);
        keepBest();
    }

    StripPacking.Spot[] best() {
        return best.spots();
    }

    double bestLength() {
        return bestLength;
    }

    private void keepBest() {
        bestLength = best.length();
        pooled = 0;
        work.found(bestLength);
    }

    /** Goes on until some part of the work is spent. */
    void search(double untilPart) {
        while (goesOn(untilPart) && bestLength > lowerBound + REACHED_CM) {
            boolean atLast = work.spentPart() >= AT_LAST;
            double leastCut = atLast ? LEAST_CUT_AT_LAST : LEAST_CUT;
            cut = Math.max(cut, leastCut);
            if (pooled == 0 || atLast) {
                pooled = 0;
                target = Math.max(lowerBound, bestLength * (1 - cut));
                overlaps.copyFrom(best);
                shorten();
            } else {
                double drawn = random.nextDouble();
                overlaps.copyFrom(pool[(int) (pooled * drawn * drawn)]);
                exchangeTwo();
            }
            if (separates(untilPart)) {
                best.copyFrom(overlaps);
                keepBest();
                cut = Math.min(MOST_CUT, cut * FASTER);
            } else if (cut > leastCut) {
                cut /= 2;
            } else {
                keepLeast();
            }
        }
    }

    private boolean goesOn(double untilPart) {
        return work.spentPart() < untilPart && !work.isDone();
    }

    /** Moves what lies above a height down by what is cut off, and what sticks out into the strip. */
    private void shorten() {
        double cutOff = Math.rint((bestLength - target) * ROUND) / ROUND;
        double above = random.nextDouble() * bestLength;
        for (int item = 0; item < overlaps.count; item++) {
            double height = overlaps.shape(item).height;
            double y = overlaps.y[item] + height / 2 > above ? overlaps.y[item] - cutOff : overlaps.y[item];
            overlaps.y[item] = Math.max(0, Math.min(y, Math.floor((target - height) * ROUND) / ROUND));
        }
        overlaps.measureAll();
    }

    /** Puts two large items of different kinds each in the place of the other, where a few draws find such. */
    private void exchangeTwo() {
        int one = large();
        int other = large();
        for (int draw = 0; draw < 10 && overlaps.kinds.kind(one) == overlaps.kinds.kind(other); draw++) {
            other = large();
        }
        spots.exchange(one, other, target);
    }

    /** The largest of three items drawn. */
    private int large() {
        int largest = random.nextInt(overlaps.count);
        for (int draw = 1; draw < 3; draw++) {
            int item = random.nextInt(overlaps.count);
            if (overlaps.shape(item).area > overlaps.shape(largest).area) {
                largest = item;
            }
        }
        return largest;
    }

    /** Keeps the layout of least overlap of the last attempt, in the place of the worst of a full pool, best first. */
    private void keepLeast() {
        if (pooled == POOL && pool[POOL - 1].sum() <= least.sum()) {
            return;
        }
        int at = pooled == POOL ? POOL - 1 : pooled++;
        Overlaps kept = pool[at];
        kept.copyFrom(least);
        for (; at > 0 && pool[at - 1].sum() > kept.sum(); at--) {
            pool[at] = pool[at - 1];
        }
        pool[at] = kept;
    }

    /** Moves items until none overlaps, or until several runs from the layout of least overlap come no nearer. */
    private boolean separates(double untilPart) {
        overlaps.evenWeights();
        least.copyFrom(overlaps);
        for (int strike = 0; strike < STRIKES && least.sum() > 0 && goesOn(untilPart); strike++) {
            double before = least.sum();
            overlaps.copyFrom(least);
            run(untilPart);
            if (least.sum() < GAIN * before) {
                strike = -1;
            }
        }
        return least.sum() == 0;
    }

    /** Rounds of moves, until so many brought little. */
    private void run(double untilPart) {
        double leastSum = least.sum();
        for (int waited = 0; leastSum > 0 && waited < PATIENCE && goesOn(untilPart); waited++) {
            moveOverlapping();
            overlaps.weigh();
            double sum = overlaps.sum();
            if (sum < leastSum) {
                waited = sum < GAIN * leastSum ? -1 : waited;
                leastSum = sum;
                least.copyFrom(overlaps);
            }
        }
    }

    private void moveOverlapping() {
        int size = 0;
        for (int item = 0; item < overlaps.count; item++) {
            if (overlaps.cost(item) > 0) {
                int at = random.nextInt(size + 1);
                order[size++] = order[at];
                order[at] = item;
            }
        }
        for (int i = 0; i < size; i++) {
            if (overlaps.cost(order[i]) > 0) {
                spots.improve(order[i], target);
            }
        }
        work.spend((long) overlaps.count * overlaps.count / 4);
    }
}
