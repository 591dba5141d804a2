package campcloth.layout.search;

import java.util.Arrays;
import java.util.stream.IntStream;

/** The convex hull of a ring by the monotone chain (A. M. Andrew 1979, "Another efficient algorithm for convex hulls"). */
final class ConvexHull {

    private ConvexHull() {}

    static Ring of(Ring ring) {
        int[] sorted = IntStream.range(0, ring.size())
                .boxed()
                .sorted((a, b) -> ring.x[a] != ring.x[b]
                        ? Double.compare(ring.x[a], ring.x[b])
                        : Double.compare(ring.y[a], ring.y[b]))
                .mapToInt(Integer::intValue)
                .toArray();
        int[] hull = new int[2 * sorted.length];
        int count = 0;
        for (int corner : sorted) {
            count = add(ring, hull, count, 0, corner);
        }
        int lower = count - 1;
        for (int i = sorted.length - 2; i >= 0; i--) {
            count = add(ring, hull, count, lower, sorted[i]);
        }
        return ring.through(Arrays.copyOf(hull, count - 1));
    }

    private static int add(Ring ring, int[] hull, int count, int from, int corner) {
        int kept = count;
        while (kept > from + 1 && ring.turn(hull[kept - 2], hull[kept - 1], corner) <= 0) {
            kept--;
        }
        hull[kept] = corner;
        return kept + 1;
    }
}
