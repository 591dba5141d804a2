package campcloth.layout;

import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where a closed chain of points meets itself: two edges cross or touch, or an edge runs back over its neighbour. Edges are
 * swept from left to right, so only those that share a stretch of x are compared. Touching is told exactly for coordinates
 * that doubles hold exactly; elsewhere a touch may pass as a miss by a rounding error.
 */
final class SelfCrossing {

    private record Edge(int index, Point from, Point to) {

        double left() {
            return Math.min(from.xCm(), to.xCm());
        }

        double right() {
            return Math.max(from.xCm(), to.xCm());
        }

        private String words() {
            return words(from) + " to " + words(to);
        }

        private static String words(Point point) {
            return "(" + Words.number(point.xCm()) + ", " + Words.number(point.yCm()) + ")";
        }
    }

    private SelfCrossing() {}

    /** What meets what, in words; empty where the chain is simple. */
    static Optional<String> of(List<Point> corners) {
        int size = corners.size();
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            edges.add(new Edge(i, corners.get(i), corners.get((i + 1) % size)));
        }
        edges.sort(Comparator.comparingDouble(Edge::left));
        List<Edge> active = new ArrayList<>();
        for (Edge edge : edges) {
            active.removeIf(earlier -> earlier.right() < edge.left());
            for (Edge earlier : active) {
                if (meet(earlier, edge, size)) {
                    return Optional.of("the edge from " + earlier.words() + " meets the edge from " + edge.words());
                }
            }
            active.add(edge);
        }
        return Optional.empty();
    }

    private static boolean meet(Edge a, Edge b, int size) {
        if ((a.index + 1) % size == b.index) {
            return runsBack(a, b);
        }
        if ((b.index + 1) % size == a.index) {
            return runsBack(b, a);
        }
        if (Math.max(a.from.yCm(), a.to.yCm()) < Math.min(b.from.yCm(), b.to.yCm())
                || Math.max(b.from.yCm(), b.to.yCm()) < Math.min(a.from.yCm(), a.to.yCm())) {
            return false;
        }
        double fromSide = side(a, b.from);
        double toSide = side(a, b.to);
        double otherFrom = side(b, a.from);
        double otherTo = side(b, a.to);
        return !sameSide(fromSide, toSide) && !sameSide(otherFrom, otherTo);
    }

    /** Both strictly on one side; boxes that share no point were told apart before, so collinear edges here overlap. */
    private static boolean sameSide(double one, double other) {
        return one > 0 && other > 0 || one < 0 && other < 0;
    }

    private static boolean runsBack(Edge first, Edge next) {
        double along = (first.to.xCm() - first.from.xCm()) * (next.to.xCm() - next.from.xCm())
                + (first.to.yCm() - first.from.yCm()) * (next.to.yCm() - next.from.yCm());
        return side(first, next.to) == 0 && along < 0;
    }

    private static double side(Edge edge, Point point) {
        return (edge.to.xCm() - edge.from.xCm()) * (point.yCm() - edge.from.yCm())
                - (edge.to.yCm() - edge.from.yCm()) * (point.xCm() - edge.from.xCm());
    }
}
