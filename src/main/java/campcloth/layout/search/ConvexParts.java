package campcloth.layout.search;

import java.util.ArrayList;
import java.util.List;

/**
 * A simple polygon cut into convex parts: ears are clipped into triangles, the shortest cut first, and triangles are merged
 * over cuts that a convex part does not need (S. Hertel, K. Mehlhorn 1983, "Fast triangulation of simple polygons": at most
 * four times as many parts as needed). A convex polygon comes back whole.
 */
final class ConvexParts {

    private ConvexParts() {}

    static List<Ring> of(Ring given) {
        Ring ring = given.withoutFlatCorners();
        if (ring.isConvex()) {
            return List.of(ring);
        }
        List<int[]> parts = triangles(ring);
        boolean merging = true;
        while (merging) {
            merging = mergeOnce(ring, parts);
        }
        return parts.stream()
                .map(part -> ring.through(part).withoutFlatCorners())
                .toList();
    }

    private static List<int[]> triangles(Ring ring) {
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            left.add(i);
        }
        List<int[]> triangles = new ArrayList<>();
        while (left.size() > 3) {
            int ear = bestEar(ring, left);
            int count = left.size();
            triangles.add(new int[] {left.get((ear + count - 1) % count), left.get(ear), left.get((ear + 1) % count)});
            left.remove(ear);
        }
        triangles.add(left.stream().mapToInt(Integer::intValue).toArray());
        triangles.removeIf(triangle -> ring.turn(triangle[0], triangle[1], triangle[2]) <= 0);
        return triangles;
    }

    /** The ear with the shortest cut; where rounding hides every ear, the sharpest corner to the left. */
    private static int bestEar(Ring ring, List<Integer> left) {
        int count = left.size();
        int best = -1;
        double shortest = Double.POSITIVE_INFINITY;
        int sharpest = 0;
        double sharpestBend = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            int a = left.get((i + count - 1) % count);
            int b = left.get(i);
            int c = left.get((i + 1) % count);
            double bend = ring.bend(a, b, c);
            double cut = Math.hypot(ring.x[c] - ring.x[a], ring.y[c] - ring.y[a]);
            if (bend > sharpestBend) {
                sharpestBend = bend;
                sharpest = i;
            }
            if (bend >= 0 && cut < shortest && isClear(ring, left, a, b, c)) {
                shortest = cut;
                best = i;
            }
        }
        return best < 0 ? sharpest : best;
    }

    private static boolean isClear(Ring ring, List<Integer> left, int a, int b, int c) {
        for (int other : left) {
            if (other != a && other != b && other != c) {
                if (ring.turn(a, b, other) >= 0 && ring.turn(b, c, other) >= 0 && ring.turn(c, a, other) >= 0) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean mergeOnce(Ring ring, List<int[]> parts) {
        for (int first = 0; first < parts.size(); first++) {
            for (int second = first + 1; second < parts.size(); second++) {
                int[] merged = merged(ring, parts.get(first), parts.get(second));
                if (merged.length > 0) {
                    parts.set(first, merged);
                    parts.remove(second);
                    return true;
                }
            }
        }
        return false;
    }

    /** Both parts as one over their common cut; empty where there is none or the union is not convex. */
    private static int[] merged(Ring ring, int[] one, int[] other) {
        for (int i = 0; i < one.length; i++) {
            for (int j = 0; j < other.length; j++) {
                if (one[i] == other[(j + 1) % other.length] && one[(i + 1) % one.length] == other[j]) {
                    int[] union = union(one, i, other, j);
                    return ring.through(union).isConvex() ? union : new int[0];
                }
            }
        }
        return new int[0];
    }

    private static int[] union(int[] one, int cutOfOne, int[] other, int cutOfOther) {
        int[] union = new int[one.length + other.length - 2];
        int count = 0;
        for (int k = 1; k <= one.length; k++) {
            union[count++] = one[(cutOfOne + k) % one.length];
        }
        for (int k = 2; k < other.length; k++) {
            union[count++] = other[(cutOfOther + k) % other.length];
        }
        return union;
    }
}
