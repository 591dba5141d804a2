package campcloth.layout.search;

import java.util.Arrays;
import java.util.Comparator;

/**
 * How deep a spot lies in a no-fit polygon: for each convex part that contains it the least distance to one of its edges, of
 * several parts the greatest; 0 outside and on the edge, as {@link HalfPlanes#contains} sees it. Moving a shape so far out
 * over the edge meant frees it of that part. The same numbers as in the parts, laid out flat for speed.
 */
final class Depth {

    private static final int NUMBERS_OF_PLANE = 3;
    private static final int NUMBERS_OF_BOX = 4;

    final double left;
    final double low;
    final double right;
    final double high;
    /** Boxes of the parts, four numbers each: left, right, low, high. */
    private final double[] boxes;
    /** By part: index of the first number of its planes; the end of the last part closes it. */
    private final int[] from;
    /** Half-planes, three numbers each: normal x, normal y, reach. */
    private final double[] planes;

    Depth(Forbidden forbidden) {
        left = forbidden.left;
        low = forbidden.low;
        right = forbidden.right;
        high = forbidden.high;
        HalfPlanes[] parts = forbidden.parts.clone();
        Arrays.sort(parts, Comparator.comparingDouble(part -> -(part.right - part.left) * (part.high - part.low)));
        boxes = new double[NUMBERS_OF_BOX * parts.length];
        from = new int[parts.length + 1];
        planes = new double
                [NUMBERS_OF_PLANE
                        * Arrays.stream(parts)
                                .mapToInt(part -> part.reach.length)
                                .sum()];
        int at = 0;
        for (int p = 0; p < parts.length; p++) {
            HalfPlanes part = parts[p];
            boxes[NUMBERS_OF_BOX * p] = part.left;
            boxes[NUMBERS_OF_BOX * p + 1] = part.right;
            boxes[NUMBERS_OF_BOX * p + 2] = part.low;
            boxes[NUMBERS_OF_BOX * p + 3] = part.high;
            from[p] = at;
            for (int i = 0; i < part.reach.length; i++) {
                planes[at++] = part.normalX[i];
                planes[at++] = part.normalY[i];
                planes[at++] = part.reach[i];
            }
        }
        from[parts.length] = at;
    }

    /** Depth in cm at a spot. */
    double at(double x, double y) {
        double deepest = HalfPlanes.DEPTH;
        for (int p = 0, box = 0; p + 1 < from.length; p++, box += NUMBERS_OF_BOX) {
            if (x > boxes[box] && x < boxes[box + 1] && y > boxes[box + 2] && y < boxes[box + 3]) {
                double least = Double.POSITIVE_INFINITY;
                int end = from[p + 1];
                for (int i = from[p]; i < end && least > deepest; i += NUMBERS_OF_PLANE) {
                    least = Math.min(least, planes[i + 2] - planes[i] * x - planes[i + 1] * y);
                }
                deepest = Math.max(deepest, least);
            }
        }
        return deepest > HalfPlanes.DEPTH ? deepest : 0;
    }

    /** The half-plane over whose edge the way out of a spot is meant; negative where the spot is free. */
    int wayOut(double x, double y) {
        double deepest = HalfPlanes.DEPTH;
        int plane = -1;
        for (int p = 0, box = 0; p + 1 < from.length; p++, box += NUMBERS_OF_BOX) {
            if (x > boxes[box] && x < boxes[box + 1] && y > boxes[box + 2] && y < boxes[box + 3]) {
                double least = Double.POSITIVE_INFINITY;
                int nearest = -1;
                int end = from[p + 1];
                for (int i = from[p]; i < end && least > deepest; i += NUMBERS_OF_PLANE) {
                    double depth = planes[i + 2] - planes[i] * x - planes[i + 1] * y;
                    if (depth < least) {
                        least = depth;
                        nearest = i;
                    }
                }
                if (least > deepest) {
                    deepest = least;
                    plane = nearest;
                }
            }
        }
        return plane;
    }

    double normalX(int plane) {
        return planes[plane];
    }

    double normalY(int plane) {
        return planes[plane + 1];
    }

    double reach(int plane) {
        return planes[plane + 2];
    }

    /** What finding a depth costs, about, in steps. */
    int price() {
        return (from.length + planes.length / 8) * 5 / 8;
    }
}
