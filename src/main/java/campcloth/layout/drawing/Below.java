package campcloth.layout.drawing;

import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Which of two shapes lies between the other and the cut edge: it is below where a line along the cloth meets it first. Of
 * two convex shapes that do not overlap at most one is below the other; two that reach into each other may both be.
 */
final class Below {

    private static final double TOUCH_CM = 1e-6;

    private Below() {}

    static boolean isBelow(Shape lower, Shape upper) {
        double from = Math.max(lower.leftCm(), upper.leftCm());
        double to = Math.min(lower.rightCm(), upper.rightCm());
        if (to - from < TOUCH_CM || lower.lowCm() > upper.topCm() - TOUCH_CM) {
            return false;
        }
        if (lower.topCm() < upper.lowCm() + TOUCH_CM) {
            return true;
        }
        List<Double> columns = columns(lower, upper, from, to);
        for (int i = 0; i + 1 < columns.size(); i++) {
            double x = (columns.get(i) + columns.get(i + 1)) / 2;
            if (columns.get(i + 1) - columns.get(i) > TOUCH_CM && lower.lowestAt(x) < upper.highestAt(x) - TOUCH_CM) {
                return true;
            }
        }
        return false;
    }

    private static List<Double> columns(Shape a, Shape b, double from, double to) {
        List<Double> columns = new ArrayList<>(List.of(from, to));
        for (Shape shape : List.of(a, b)) {
            for (Point point : shape.points()) {
                if (point.xCm() > from && point.xCm() < to) {
                    columns.add(point.xCm());
                }
            }
        }
        columns.sort(Double::compare);
        return columns;
    }
}
