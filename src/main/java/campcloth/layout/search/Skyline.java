package campcloth.layout.search;

/**
 * The upper outline of rectangles laid on a strip from below: level stretches from the left edge to the right one. What lies
 * under it counts as used. Lengths in cm.
 */
final class Skyline {

    /** Lengths closer than this count as equal. */
    private static final double SAME = 1e-9;

    private final double width;
    /** By stretch: left end and height; the right end is the next one's left end. */
    private final double[] left;

    private final double[] height;
    private int count;

    Skyline(double width, int mostRectangles) {
        this.width = width;
        this.left = new double[2 * mostRectangles + 2];
        this.height = new double[2 * mostRectangles + 2];
        clear();
    }

    void clear() {
        count = 1;
        left[0] = 0;
        height[0] = 0;
    }

    /** The lowest stretch, of several the leftmost. */
    int lowest() {
        int lowest = 0;
        for (int i = 1; i < count; i++) {
            if (height[i] < height[lowest] - SAME) {
                lowest = i;
            }
        }
        return lowest;
    }

    double leftOf(int stretch) {
        return left[stretch];
    }

    double rightOf(int stretch) {
        return stretch + 1 < count ? left[stretch + 1] : width;
    }

    double heightOf(int stretch) {
        return height[stretch];
    }

    /** How much higher the left neighbour is; infinite at the edge of the strip. */
    double leftWall(int stretch) {
        return stretch == 0 ? Double.POSITIVE_INFINITY : height[stretch - 1] - height[stretch];
    }

    /** The same on the right. */
    double rightWall(int stretch) {
        return stretch + 1 == count ? Double.POSITIVE_INFINITY : height[stretch + 1] - height[stretch];
    }

    /** Gives a stretch up: it rises to its lower neighbour. */
    void giveUp(int stretch) {
        double rise = Math.min(leftWall(stretch), rightWall(stretch));
        if (Double.isFinite(rise)) {
            height[stretch] += rise;
            merge(stretch);
        }
    }

    /** Lays a rectangle on a stretch, at its left or right end; it is no wider than the stretch. */
    void lay(int stretch, double rectangleWidth, double rectangleHeight, boolean atRight) {
        double over = rightOf(stretch) - left[stretch] - rectangleWidth;
        if (over <= SAME) {
            height[stretch] += rectangleHeight;
            merge(stretch);
            return;
        }
        System.arraycopy(left, stretch, left, stretch + 1, count - stretch);
        System.arraycopy(height, stretch, height, stretch + 1, count - stretch);
        count++;
        if (atRight) {
            left[stretch + 1] = rightOf(stretch + 1) - rectangleWidth;
            height[stretch + 1] += rectangleHeight;
            merge(stretch + 1);
        } else {
            left[stretch + 1] = left[stretch] + rectangleWidth;
            height[stretch] += rectangleHeight;
            merge(stretch);
        }
    }

    /** Joins a stretch with neighbours of its height. */
    private void merge(int stretch) {
        if (stretch + 1 < count && Math.abs(height[stretch + 1] - height[stretch]) <= SAME) {
            remove(stretch + 1);
        }
        if (stretch > 0 && Math.abs(height[stretch - 1] - height[stretch]) <= SAME) {
            remove(stretch);
        }
    }

    private void remove(int stretch) {
        System.arraycopy(left, stretch + 1, left, stretch, count - stretch - 1);
        System.arraycopy(height, stretch + 1, height, stretch, count - stretch - 1);
        count--;
    }
}
