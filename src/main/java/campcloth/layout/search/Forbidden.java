package campcloth.layout.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The no-fit polygon of a moving shape round a fixed one: the spots of the moving shape's lower left corner, seen from that
 * of the fixed one, at which the two would overlap. For convex parts it is the open Minkowski sum of the fixed part and the
 * moving part reflected in its corner; for any shapes the union of those of all pairs of parts. A gap adds a square of that
 * half-side to the sum. Touching is allowed.
 *
 * <p>Beside the parts it keeps the outer boundary of their union as edges that rise (level ones run to the right).
 */
final class Forbidden {

    final HalfPlanes[] parts;
    final double left;
    final double low;
    final double right;
    final double high;
    /** Edges, four numbers each: from x, from y, to x, to y. */
    final double[] edges;

    private Forbidden(List<Ring> sums) {
        parts = sums.stream().map(HalfPlanes::new).toArray(HalfPlanes[]::new);
        left = Arrays.stream(parts).mapToDouble(part -> part.left).min().orElseThrow();
        low = Arrays.stream(parts).mapToDouble(part -> part.low).min().orElseThrow();
        right = Arrays.stream(parts).mapToDouble(part -> part.right).max().orElseThrow();
        high = Arrays.stream(parts).mapToDouble(part -> part.high).max().orElseThrow();
        List<double[]> outer = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            Ring ring = sums.get(i);
            for (int corner = 0; corner < ring.size(); corner++) {
                addOuter(i, rising(ring, corner), outer);
            }
        }
        edges = outer.stream().flatMapToDouble(Arrays::stream).toArray();
    }

    static Forbidden of(Shape fixed, Shape moving, double gap) {
        List<Ring> sums = new ArrayList<>();
        Ring square = Ring.of(new double[] {-gap, gap, gap, -gap}, new double[] {-gap, -gap, gap, gap});
        for (Ring fixedPart : fixed.parts) {
            for (Ring movingPart : moving.partsNegated) {
                Ring sum = ConvexSum.of(fixedPart, movingPart);
                sums.add(gap > 0 ? ConvexSum.of(sum, square) : sum);
            }
        }
        return new Forbidden(sums);
    }

    private static double[] rising(Ring ring, int corner) {
        int next = ring.next(corner);
        boolean rises =
                ring.y[corner] < ring.y[next] || ring.y[corner] == ring.y[next] && ring.x[corner] <= ring.x[next];
        int from = rises ? corner : next;
        int to = rises ? next : corner;
        return new double[] {ring.x[from], ring.y[from], ring.x[to], ring.y[to]};
    }

    /** Adds what the other parts leave uncovered of an edge of one part; most edges inside of the union are seen to be covered soon. */
    private void addOuter(int own, double[] edge, List<double[]> outer) {
        double stepX = edge[2] - edge[0];
        double stepY = edge[3] - edge[1];
        List<double[]> covered = new ArrayList<>();
        double free = 0;
        for (int i = 0; i < parts.length; i++) {
            if (i != own && parts[i].mayMeet(edge)) {
                double from = Math.max(0, parts[i].entry(edge[0], edge[1], stepX, stepY));
                double to = Math.min(1, parts[i].exit(edge[0], edge[1], stepX, stepY));
                if (from < to && from <= free) {
                    free = Math.max(free, to);
                } else if (from < to) {
                    covered.add(new double[] {from, to});
                }
                if (free >= 1) {
                    return;
                }
            }
        }
        covered.sort((a, b) -> Double.compare(a[0], b[0]));
        for (double[] stretch : covered) {
            if (stretch[0] > free) {
                outer.add(between(edge, free, stretch[0]));
            }
            free = Math.max(free, stretch[1]);
        }
        if (free < 1) {
            outer.add(between(edge, free, 1));
        }
    }

    private static double[] between(double[] edge, double from, double to) {
        double stepX = edge[2] - edge[0];
        double stepY = edge[3] - edge[1];
        double endX = to == 1 ? edge[2] : edge[0] + to * stepX;
        double endY = to == 1 ? edge[3] : edge[1] + to * stepY;
        return new double[] {edge[0] + from * stepX, edge[1] + from * stepY, endX, endY};
    }

    /** Rough count of the numbers kept. */
    int weight() {
        int weight = edges.length + 16;
        for (HalfPlanes part : parts) {
            weight += 3 * part.reach.length + 16;
        }
        return weight;
    }
}
