package campcloth.layout.search;

/**
 * Pushes all items that overlap apart at once, in small steps: every pair that overlaps moves apart along its shortest way
 * out, each by half of it, again and again (constraint projection as in M. Mueller et al. 2007, "Position based dynamics").
 * Where the neighbours have room to give way, a layout cut a little shorter comes free by that alone.
 */
final class Pushing {

    private static final double ROUND = 1e9;
    /** Parts of the length: what a push goes beyond the edge, and how near a pair must be to be looked at. */
    private static final double BEYOND = 3e-6;

    private static final double NEAR = 0.02;

    private final Overlaps overlaps;
    private final DepthTable depths;
    private final double stripWidth;
    private int[] one = new int[64];
    private int[] other = new int[64];
    private int pairs;

    Pushing(double stripWidth, Overlaps overlaps, DepthTable depths) {
        this.stripWidth = stripWidth;
        this.overlaps = overlaps;
        this.depths = depths;
    }

    /** Pushes so many times or until nothing overlaps. */
    void push(double length, int times) {
        gather(NEAR * length);
        double beyond = BEYOND * length;
        for (int time = 0; time < times; time++) {
            int overlapping = 0;
            int paid = 0;
            for (int pair = 0; pair < pairs; pair++) {
                int i = one[pair];
                int j = other[pair];
                Depth depth = depths.of(overlaps.shape(j), overlaps.shape(i));
                double awayX = overlaps.x[i] - overlaps.x[j];
                double awayY = overlaps.y[i] - overlaps.y[j];
                paid += 2;
                if (awayX > depth.left && awayX < depth.right && awayY > depth.low && awayY < depth.high) {
                    paid += depth.price();
                    int plane = depth.wayOut(awayX, awayY);
                    if (plane >= 0) {
                        overlapping++;
                        double normalX = depth.normalX(plane);
                        double normalY = depth.normalY(plane);
                        double half = (depth.reach(plane) - normalX * awayX - normalY * awayY + beyond) / 2;
                        shift(i, half * normalX, half * normalY, length);
                        shift(j, -half * normalX, -half * normalY, length);
                    }
                }
            }
            depths.work().spend(paid);
            if (overlapping == 0) {
                break;
            }
        }
        overlaps.measureAll();
    }

    private void shift(int item, double byX, double byY, double length) {
        Shape shape = overlaps.shape(item);
        overlaps.x[item] = within(overlaps.x[item] + byX, stripWidth - shape.width);
        overlaps.y[item] = within(overlaps.y[item] + byY, length - shape.height);
    }

    private static double within(double value, double most) {
        return Math.max(0, Math.min(Math.rint(value * ROUND) / ROUND, Math.floor(most * ROUND) / ROUND));
    }

    private void gather(double near) {
        pairs = 0;
        for (int i = 0; i < overlaps.count; i++) {
            for (int j = 0; j < i; j++) {
                Depth depth = depths.of(overlaps.shape(j), overlaps.shape(i));
                double awayX = overlaps.x[i] - overlaps.x[j];
                double awayY = overlaps.y[i] - overlaps.y[j];
                if (awayX > depth.left - near
                        && awayX < depth.right + near
                        && awayY > depth.low - near
                        && awayY < depth.high + near) {
                    add(i, j);
                }
            }
        }
        depths.work().spend((long) overlaps.count * overlaps.count);
    }

    private void add(int i, int j) {
        if (pairs == one.length) {
            one = java.util.Arrays.copyOf(one, 2 * pairs);
            other = java.util.Arrays.copyOf(other, 2 * pairs);
        }
        one[pairs] = i;
        other[pairs++] = j;
    }
}
