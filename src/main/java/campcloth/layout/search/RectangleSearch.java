package campcloth.layout.search;

import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Searches a short layout where every item is a rectangle: orders of {@link RectangleFilling} under a ceiling lower than the best
 * length, varied until nothing is left out; then the ceiling is lowered. Where that does not come about in many tries, the
 * ceiling rises half-way to the best length.
 */
final class RectangleSearch {

    private static final double SAME = 1e-9;
    private static final int TRIES_PER_ITEM = 400;
    /** Part of the length by which no ceiling is nearer to the best. */
    private static final double CLOSE = 0.001;

    private final int items;
    private final double gap;
    private final double lowerBound;
    private final Work work;
    private final SplittableRandom random;
    private final RectangleFilling filling;
    private final int[] order;

    private final double[] height;

    private StripPacking.Spot[] best = new StripPacking.Spot[0];
    private double bestLength;

    RectangleSearch(double stripWidth, double gap, double lowerBound, ItemKinds kinds, Work work, long seed) {
        this.items = kinds.items();
        this.gap = gap;
        this.lowerBound = lowerBound;
        this.work = work;
        this.random = new SplittableRandom(seed);
        double[] width = new double[items];
        height = new double[items];
        for (int i = 0; i < items; i++) {
            width[i] = kinds.shape(i, 0).width + gap;
            height[i] = kinds.shape(i, 0).height + gap;
        }
        this.filling = new RectangleFilling(stripWidth + gap, width, height, work);
        this.order = IntStream.range(0, items)
                .boxed()
                .sorted((a, b) -> Double.compare(width[b] * height[b], width[a] * height[a]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Whether all items are rectangles. */
    static boolean isFor(ItemKinds kinds) {
        for (int i = 0; i < kinds.items(); i++) {
            Shape shape = kinds.shape(i, 0);
            if (Math.abs(shape.area - shape.width * shape.height) > SAME * shape.area) {
                return false;
            }
        }
        return true;
    }

    /** The layout begun with or a shorter one, after the work has been spent up to a part of it. */
    StripPacking.Spot[] shorter(StripPacking.Spot[] begun, double untilPart) {
        best = begun;
        bestLength = length(begun);
        double low = lowerBound;
        while (bestLength > lowerBound + SAME && !isDone(untilPart)) {
            double ceiling = low + (bestLength - low) / 2;
            low = reaches(ceiling, untilPart) || bestLength - ceiling < CLOSE * bestLength ? lowerBound : ceiling;
        }
        return best;
    }

    private double length(StripPacking.Spot[] spots) {
        double length = 0;
        for (int i = 0; i < items; i++) {
            length = Math.max(length, spots[i].y() + height[i] - gap);
        }
        return length;
    }

    private boolean isDone(double untilPart) {
        return work.isDone() || work.spentPart() >= untilPart;
    }

    private boolean reaches(double ceiling, double untilPart) {
        double left = filling.leftOut(order, ceiling + gap);
        int[] before = order.clone();
        for (int tries = TRIES_PER_ITEM * items; left > 0 && tries > 0 && !isDone(untilPart); tries--) {
            System.arraycopy(order, 0, before, 0, items);
            vary();
            double other = filling.leftOut(order, ceiling + gap);
            if (other <= left) {
                left = other;
            } else {
                System.arraycopy(before, 0, order, 0, items);
            }
        }
        if (left > 0) {
            return false;
        }
        keep();
        return true;
    }

    /** Two exchanged, or one moved. */
    private void vary() {
        int from = random.nextInt(items);
        int to = random.nextInt(items);
        int moved = order[from];
        if (random.nextBoolean()) {
            order[from] = order[to];
            order[to] = moved;
        } else if (from < to) {
            System.arraycopy(order, from + 1, order, from, to - from);
            order[to] = moved;
        } else {
            System.arraycopy(order, to, order, to + 1, from - to);
            order[to] = moved;
        }
    }

    private void keep() {
        StripPacking.Spot[] spots = new StripPacking.Spot[items];
        for (int i = 0; i < items; i++) {
            spots[i] = new StripPacking.Spot(0, filling.x[i], filling.y[i]);
        }
        double length = length(spots);
        if (length < bestLength - SAME) {
            best = spots;
            bestLength = length;
            work.found(length);
        }
    }
}
