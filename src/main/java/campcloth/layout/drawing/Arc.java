package campcloth.layout.drawing;

import campcloth.layout.Point;
import java.util.List;
import java.util.Optional;

/**
 * Part of a circle, to be drawn with a string.
 *
 * @param centre where the string is held
 * @param radiusCm its length
 * @param middle a point in the middle of the arc
 */
record Arc(Point centre, double radiusCm, Point middle) {

    /** How far a point may lie from the circle: chalk is no finer. */
    private static final double FROM_CIRCLE_CM = 0.15;

    /** The circle through points on their way; empty where they do not follow one. */
    static Optional<Arc> through(List<Point> points) {
        int last = points.size() - 1;
        Point middle = points.get(last / 2);
        return centre(points.get(0), middle, points.get(last * 3 / 4)).flatMap(centre -> {
            Arc arc = new Arc(centre, distance(centre, middle), middle);
            return points.stream().allMatch(arc::passes) ? Optional.of(arc) : Optional.empty();
        });
    }

    boolean passes(Point point) {
        return Math.abs(distance(centre, point) - radiusCm) <= FROM_CIRCLE_CM;
    }

    private static Optional<Point> centre(Point a, Point b, Point c) {
        double bx = b.xCm() - a.xCm();
        double by = b.yCm() - a.yCm();
        double cx = c.xCm() - a.xCm();
        double cy = c.yCm() - a.yCm();
        double twice = 2 * (bx * cy - by * cx);
        if (Math.abs(twice) < 1e-9) {
            return Optional.empty();
        }
        double b2 = bx * bx + by * by;
        double c2 = cx * cx + cy * cy;
        return Optional.of(new Point(a.xCm() + (cy * b2 - by * c2) / twice, a.yCm() + (bx * c2 - cx * b2) / twice));
    }

    private static double distance(Point a, Point b) {
        return Math.hypot(a.xCm() - b.xCm(), a.yCm() - b.yCm());
    }
}
