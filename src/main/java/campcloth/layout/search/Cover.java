package campcloth.layout.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A polygon of fewer corners that contains a given one and has the same bounding box, for outlines with more corners than a
 * search can afford. Corners go one by one, the one that adds the least area first: a corner to the right is cut off by the
 * chord of its neighbours (fills a dent); an edge between two corners to the left is replaced by the point where its
 * neighbours meet. Neither may cross the rest of the outline or leave the box. An outline within the limits comes back as it
 * is.
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
        if (ring.size() <= mostCorners && dents(ring) <= mostDents) {
            return ring;
        }
        Cover cover = new Cover(ring);
        Ring covering = ring;
        while (true) {
            int dents = dents(covering);
            boolean tooManyDents = dents > mostDents;
            if (!tooManyDents && covering.size() <= mostCorners) {
                return covering;
            }
            int batch = Math.max(1, (covering.size() - mostCorners) / 8);
            if (!cover.changeBest(covering, tooManyDents && covering.size() <= mostCorners, batch)) {
                return covering;
            }
            covering = Ring.of(cover.x, cover.y);
        }
    }

    private static int dents(Ring ring) {
        int dents = 0;
        for (int i = 0; i < ring.size(); i++) {
            dents += ring.bend(ring.previous(i), i, ring.next(i)) < -Ring.FLAT ? 1 : 0;
        }
        return dents;
    }

    /** Makes the cheapest changes that are possible, up to a number; whether there was one. */
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
        for (Change change : changes) {
            if (made < batch && isApart(ring, change, touched) && isClear(ring, change)) {
                make(ring, change, touched, dropped);
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

    /** Whether the triangle that the change adds holds no corner and meets no edge of the rest, nor of earlier changes. */
    private boolean isClear(Ring ring, Change change) {
        int i = change.corner;
        int before = ring.previous(i);
        int next = ring.next(i);
        double[] cornerX = {ring.x[i], ring.x[next], change.fillsDent ? ring.x[before] : change.x};
        double[] cornerY = {ring.y[i], ring.y[next], change.fillsDent ? ring.y[before] : change.y};
        double lowX = Math.min(cornerX[0], Math.min(cornerX[1], cornerX[2]));
        double highX = Math.max(cornerX[0], Math.max(cornerX[1], cornerX[2]));
        double lowY = Math.min(cornerY[0], Math.min(cornerY[1], cornerY[2]));
        double highY = Math.max(cornerY[0], Math.max(cornerY[1], cornerY[2]));
        for (int other = 0; other < ring.size(); other++) {
            int end = ring.next(other);
            boolean own = other == i || end == i || end == next || other == next;
            own |= change.fillsDent ? other == before || end == before : false;
            for (int round = 0; round < 2 && !own; round++) {
                double fromX = round == 0 ? ring.x[other] : x[other];
                double fromY = round == 0 ? ring.y[other] : y[other];
                double toX = round == 0 ? ring.x[end] : x[end];
                double toY = round == 0 ? ring.y[end] : y[end];
                if (Math.max(fromX, toX) >= lowX
                        && Math.min(fromX, toX) <= highX
                        && Math.max(fromY, toY) >= lowY
                        && Math.min(fromY, toY) <= highY) {
                    return false;
                }
            }
        }
        return true;
    }
}
