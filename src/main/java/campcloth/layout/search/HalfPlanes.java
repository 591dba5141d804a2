package campcloth.layout.search;

/**
 * A convex polygon as the half-planes {@code normal . p < reach} that it is the intersection of, with unit normals. A point
 * counts as inside where it is deeper than {@link #DEPTH}, so that pieces may touch.
 */
final class HalfPlanes {

    /** Depth in cm up to which a point counts as on the edge. */
    static final double DEPTH = 1e-9;

    final double[] normalX;
    final double[] normalY;
    final double[] reach;
    final double left;
    final double low;
    final double right;
    final double high;

    HalfPlanes(Ring ring) {
        int size = ring.size();
        normalX = new double[size];
        normalY = new double[size];
        reach = new double[size];
        for (int i = 0; i < size; i++) {
            int next = ring.next(i);
            double dx = ring.x[next] - ring.x[i];
            double dy = ring.y[next] - ring.y[i];
            double length = Math.hypot(dx, dy);
            normalX[i] = dy / length;
            normalY[i] = -dx / length;
            reach[i] = normalX[i] * ring.x[i] + normalY[i] * ring.y[i];
        }
        left = ring.left;
        low = ring.low;
        right = ring.right;
        high = ring.high;
    }

    /** Whether the box of a rising edge (from x, from y, to x, to y) meets the box of the polygon. */
    boolean mayMeet(double[] edge) {
        return edge[3] > low
                && edge[1] < high
                && Math.max(edge[0], edge[2]) > left
                && Math.min(edge[0], edge[2]) < right;
    }

    boolean contains(double x, double y) {
        if (x <= left || x >= right || y <= low || y >= high) {
            return false;
        }
        for (int i = 0; i < reach.length; i++) {
            if (normalX[i] * x + normalY[i] * y >= reach[i] - DEPTH) {
                return false;
            }
        }
        return true;
    }

    /** The parameter at which the line {@code from + t step} leaves for good; infinite for a step of nothing. */
    double exit(double fromX, double fromY, double stepX, double stepY) {
        double exit = Double.POSITIVE_INFINITY;
        for (int i = 0; i < reach.length; i++) {
            double speed = normalX[i] * stepX + normalY[i] * stepY;
            if (speed > 0) {
                double depth = reach[i] - DEPTH / 2 - normalX[i] * fromX - normalY[i] * fromY;
                exit = Math.min(exit, depth / speed);
            }
        }
        return exit;
    }

    /** The parameter at which the line {@code from + t step} is first inside; beyond the exit where it never is. */
    double entry(double fromX, double fromY, double stepX, double stepY) {
        double entry = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < reach.length; i++) {
            double speed = normalX[i] * stepX + normalY[i] * stepY;
            double depth = reach[i] - DEPTH - normalX[i] * fromX - normalY[i] * fromY;
            if (speed < 0) {
                entry = Math.max(entry, depth / speed);
            } else if (speed == 0 && depth <= 0) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return entry;
    }
}
