package campcloth.layout.drawing;

import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A rectangle of the sheet that is drawn; what lies outside is cut off. Shapes after Sutherland and Hodgman (1974), edges
 * after Liang and Barsky (1984), both from memory.
 */
record Clip(double leftCm, double lowCm, double rightCm, double topCm) {

    private static final double TOUCH_CM = 1e-6;

    boolean holds(Point point) {
        return point.xCm() >= leftCm - TOUCH_CM
                && point.xCm() <= rightCm + TOUCH_CM
                && point.yCm() >= lowCm - TOUCH_CM
                && point.yCm() <= topCm + TOUCH_CM;
    }

    /** The part of a shape inside. */
    Shape of(Shape shape) {
        Shape cut = cut(shape, true, leftCm, 1);
        cut = cut(cut, true, rightCm, -1);
        cut = cut(cut, false, lowCm, 1);
        return cut(cut, false, topCm, -1);
    }

    private static Shape cut(Shape shape, boolean across, double at, int side) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < shape.points().size(); i++) {
            Point a = shape.at(i);
            Point b = shape.at(i + 1);
            double ofA = side * ((across ? a.xCm() : a.yCm()) - at);
            double ofB = side * ((across ? b.xCm() : b.yCm()) - at);
            if (ofA >= -TOUCH_CM) {
                kept.add(a);
            }
            if (ofA < -TOUCH_CM && ofB > TOUCH_CM || ofA > TOUCH_CM && ofB < -TOUCH_CM) {
                kept.add(between(a, b, ofA / (ofA - ofB)));
            }
        }
        return new Shape(kept);
    }

    /** The part of an edge inside; empty where none is. */
    Optional<List<Point>> of(Point a, Point b) {
        double[] ends = {0, 1};
        double dx = b.xCm() - a.xCm();
        double dy = b.yCm() - a.yCm();
        boolean inside = shorten(ends, -dx, a.xCm() - leftCm)
                && shorten(ends, dx, rightCm - a.xCm())
                && shorten(ends, -dy, a.yCm() - lowCm)
                && shorten(ends, dy, topCm - a.yCm());
        return inside && ends[0] < ends[1]
                ? Optional.of(List.of(between(a, b, ends[0]), between(a, b, ends[1])))
                : Optional.empty();
    }

    private static boolean shorten(double[] ends, double towards, double roomCm) {
        if (towards == 0) {
            return roomCm >= -TOUCH_CM;
        }
        double at = roomCm / towards;
        if (towards < 0) {
            ends[0] = Math.max(ends[0], at);
        } else {
            ends[1] = Math.min(ends[1], at);
        }
        return ends[0] <= ends[1];
    }

    private static Point between(Point a, Point b, double part) {
        if (part <= 0 || part >= 1) {
            return part <= 0 ? a : b;
        }
        return new Point(a.xCm() + part * (b.xCm() - a.xCm()), a.yCm() + part * (b.yCm() - a.yCm()));
    }
}
