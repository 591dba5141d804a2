package campcloth.layout.search;

/**
 * Lays rectangles under a ceiling: always on the lowest stretch of the skyline, the one that fits it best, of equally fitting
 * ones the first in order; where none fits the stretch is given up. A fit is counted as how many sides of the gap the
 * rectangle fills exactly (after L. Wei, W.-C. Oon, W. Zhu, A. Lim 2011, "A skyline heuristic for the 2D rectangular packing and
 * strip packing problems"; from memory). Rectangles that find no place under the ceiling are left out.
 */
final class RectangleFilling {

    private static final double SAME = 1e-9;
    private static final int BEST_FIT = 4;

    private final double[] width;
    private final double[] height;
    private final Work work;
    private final Skyline skyline;
    private final int[] waiting;
    /** By rectangle: where it lies, after a filling that laid it. */
    final double[] x;

    final double[] y;

    RectangleFilling(double stripWidth, double[] width, double[] height, Work work) {
        this.width = width;
        this.height = height;
        this.work = work;
        this.skyline = new Skyline(stripWidth, width.length);
        this.waiting = new int[width.length];
        this.x = new double[width.length];
        this.y = new double[width.length];
    }

    /** Area of what is left out, cm2; 0 where all lie under the ceiling. */
    double leftOut(int[] order, double ceiling) {
        skyline.clear();
        System.arraycopy(order, 0, waiting, 0, order.length);
        int count = order.length;
        while (count > 0) {
            int stretch = skyline.lowest();
            double base = skyline.heightOf(stretch);
            if (base >= ceiling) {
                break;
            }
            int at = bestFit(count, stretch, ceiling - base);
            if (at < 0) {
                if (skyline.leftWall(stretch) == Double.POSITIVE_INFINITY
                        && skyline.rightWall(stretch) == Double.POSITIVE_INFINITY) {
                    break;
                }
                skyline.giveUp(stretch);
            } else {
                lay(waiting[at], stretch);
                System.arraycopy(waiting, at + 1, waiting, at, count - at - 1);
                count--;
            }
        }
        double area = 0;
        for (int i = 0; i < count; i++) {
            area += width[waiting[i]] * height[waiting[i]];
        }
        return area;
    }

    private int bestFit(int count, int stretch, double room) {
        double gap = skyline.rightOf(stretch) - skyline.leftOf(stretch);
        double high = Math.max(skyline.leftWall(stretch), skyline.rightWall(stretch));
        double low = Math.min(skyline.leftWall(stretch), skyline.rightWall(stretch));
        int best = -1;
        int bestFit = -1;
        for (int i = 0; i < count && bestFit < BEST_FIT; i++) {
            int rectangle = waiting[i];
            if (width[rectangle] <= gap + SAME && height[rectangle] <= room + SAME) {
                int fit = fit(gap - width[rectangle], height[rectangle], high, low);
                if (fit > bestFit) {
                    best = i;
                    bestFit = fit;
                }
            }
        }
        work.spend(count);
        return best;
    }

    private static int fit(double over, double tall, double high, double low) {
        boolean meetsHigh = Math.abs(tall - high) <= SAME;
        boolean meetsLow = Math.abs(tall - low) <= SAME;
        if (over <= SAME) {
            return meetsHigh ? BEST_FIT : meetsLow ? 3 : 2;
        }
        return meetsHigh || meetsLow ? 1 : 0;
    }

    /** Beside the wall that it is level with, else beside the higher one. */
    private void lay(int rectangle, int stretch) {
        double leftWall = skyline.leftWall(stretch);
        double rightWall = skyline.rightWall(stretch);
        boolean atRight = Math.abs(height[rectangle] - leftWall) > SAME
                && (Math.abs(height[rectangle] - rightWall) <= SAME || rightWall > leftWall);
        x[rectangle] = atRight ? skyline.rightOf(stretch) - width[rectangle] : skyline.leftOf(stretch);
        y[rectangle] = skyline.heightOf(stretch);
        skyline.lay(stretch, width[rectangle], height[rectangle], atRight);
    }
}
