package campcloth.layout.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A polygon of fewer corners that contains a given one and has the same bounding box, for outlines with more corners than a
 * search can afford. Corners go one by one, the one that adds the least area first: a corner to the right is cut off by the
 * chord of its neighbours (fills a dent); an edge between two corners to the left is replaced by the point where its
 * neighbours meet. Neither may cross the rest of the outline or leave the box; where that stops every change, the convex hull
 * takes the outline's place. An outline within the limits comes back as it is.
 */
final class Cover {

    private record Change(int corner, boolean fillsDent, double x, double y, double area) {}

    private final double left;
    private final double low;
    private final double right;
    private final double high;
    private double[] x;
    private double[] y;

    private Cover(Ring ring) {
        left = ring.left;
        low = ring.low;
        right = ring.right;
        high = ring.high;
        x = ring.x;
        y = ring.y;
    }

    static Ring of(Ring ring, int mostCorners, int mostDents) {
        Cover cover = new Cover(ring);
        Ring covering = ring;
        int dents = dents(ring);
        while (dents > mostDents || covering.size() > mostCorners) {
            boolean dentsOnly = covering.size() <= mostCorners;
            int batch = Math.max(1, (covering.size() - mostCorners) / 8);
            if (cover.changeBest(covering, dentsOnly, batch)) {
                covering = Ring.of(cover.x, cover.y);
            } else if (dents > 0) {
                covering = ConvexHull.of(covering);
            } else {
                return covering;
            }
            dents = dents(covering);
        }
        return covering;
    }

    private static int dents(Ring ring) {
        int dents = 0;
        for (int i = 0; i < ring.size(); i++) {
            dents += ring.bend(ring.previous(i), i, ring.next(i)) < -Ring.FLAT ? 1 : 0;
        }
        return dents;
    }

    /** Makes the cheapest possible changes of one sort, up to a number; whether there was one. */
    private boolean changeBest(Ring ring, boolean dentsOnly, int batch) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            addChange(ring, i, dentsOnly, changes);
        }
        changes.sort((a, b) -> Double.compare(a.area, b.area));
        boolean[] touched = new boolean[ring.size()];
        boolean[] dropped = new boolean[ring.size()];
        x = ring.x.clone();
        y = ring.y.clone();
        int made = 0;
        boolean fillsDents = false;
        for (Change change : changes) {
            boolean alike = made == 0 || change.fillsDent == fillsDents;
            if (alike && made < batch && isApart(ring, change, touched) && isClear(ring, change)) {
                make(ring, change, touched, dropped);
                fillsDents = change.fillsDent;
                made++;
            }
        }
        int[] kept = new int[ring.size()];
        int count = 0;
        for (int i = 0; i < ring.size(); i++) {
            if (!dropped[i]) {
                kept[count++] = i;
            }
        }
        Ring changed = Ring.of(x, y).through(Arrays.copyOf(kept, count));
        x = changed.x;
        y = changed.y;
        return made > 0;
    }

    private void addChange(Ring ring, int i, boolean dentsOnly, List<Change> changes) {
        int before = ring.previous(i);
        int next = ring.next(i);
        if (ring.bend(before, i, next) <= Ring.FLAT) {
            changes.add(new Change(i, true, 0, 0, Math.max(0, -ring.turn(before, i, next) / 2)));
            return;
        }
        int after = ring.next(next);
        if (dentsOnly || ring.size() <= 4 || ring.turn(i, next, after) <= 0) {
            return;
        }
        double ax = ring.x[i] - ring.x[before];
        double ay = ring.y[i] - ring.y[before];
        double bx = ring.x[next] - ring.x[after];
        double by = ring.y[next] - ring.y[after];
        double cross = ax * by - ay * bx;
        double t = ((ring.x[next] - ring.x[i]) * by - (ring.y[next] - ring.y[i]) * bx) / cross;
        double meetX = ring.x[i] + t * ax;
        double meetY = ring.y[i] + t * ay;
        if (cross < 0 && t > 0 && meetX >= left && meetX <= right && meetY >= low && meetY <= high) {
            double area = Math.abs((ring.x[next] - ring.x[i]) * (meetY - ring.y[i])
                            - (ring.y[next] - ring.y[i]) * (meetX - ring.x[i]))
                    / 2;
            changes.add(new Change(i, false, meetX, meetY, area));
        }
    }

    private static boolean isApart(Ring ring, Change change, boolean[] touched) {
        int i = change.corner;
        int before = ring.previous(i);
        int next = ring.next(i);
        return !touched[i] && !touched[before] && !touched[next] && !touched[ring.next(next)];
    }

    private void make(Ring ring, Change change, boolean[] touched, boolean[] dropped) {
        int i = change.corner;
        int next = ring.next(i);
        for (int corner : new int[] {ring.previous(i), i, next, ring.next(next)}) {
            touched[corner] = true;
        }
        dropped[i] = true;
        if (!change.fillsDent) {
            x[next] = change.x;
            y[next] = change.y;
        }
    }

    /** Whether the triangle that the change adds meets no edge of the rest, nor of earlier changes. */
    private boolean isClear(Ring ring, Change change) {
        int i = change.corner;
        int before = ring.previous(i);
        int next = ring.next(i);
        Triangle added = new Triangle(
                new double[] {ring.x[i], ring.x[next], change.fillsDent ? ring.x[before] : change.x},
                new double[] {ring.y[i], ring.y[next], change.fillsDent ? ring.y[before] : change.y});
        for (int other = 0; other < ring.size(); other++) {
            int end = ring.next(other);
            boolean own = other == i || end == i || other == next || change.fillsDent && end == before;
            if (!own
                    && (added.meets(ring.x[other], ring.y[other], ring.x[end], ring.y[end])
                            || added.meets(x[other], y[other], x[end], y[end]))) {
                return false;
            }
        }
        return true;
    }

    /** A triangle with its edge included. */
    private record Triangle(double[] x, double[] y) {

        /** Whether a stretch of line shares a point with it: no edge of one and no stretch has all of the other outside. */
        boolean meets(double fromX, double fromY, double toX, double toY) {
            if (Math.max(fromX, toX) < Math.min(x[0], Math.min(x[1], x[2]))
                    || Math.min(fromX, toX) > Math.max(x[0], Math.max(x[1], x[2]))
                    || Math.max(fromY, toY) < Math.min(y[0], Math.min(y[1], y[2]))
                    || Math.min(fromY, toY) > Math.max(y[0], Math.max(y[1], y[2]))) {
                return false;
            }
            for (int i = 0; i < 3; i++) {
                int next = (i + 1) % 3;
                int third = (i + 2) % 3;
                double inside = side(x[i], y[i], x[next], y[next], x[third], y[third]);
                double from = side(x[i], y[i], x[next], y[next], fromX, fromY);
                double to = side(x[i], y[i], x[next], y[next], toX, toY);
                if (inside > 0 && from < 0 && to < 0 || inside < 0 && from > 0 && to > 0) {
                    return false;
                }
            }
            double a = side(fromX, fromY, toX, toY, x[0], y[0]);
            double b = side(fromX, fromY, toX, toY, x[1], y[1]);
            double c = side(fromX, fromY, toX, toY, x[2], y[2]);
            return !(a > 0 && b > 0 && c > 0 || a < 0 && b < 0 && c < 0);
        }

        private static double side(double ax, double ay, double bx, double by, double px, double py) {
            return (bx - ax) * (py - ay) - (by - ay) * (px - ax);
        }
    }
}
