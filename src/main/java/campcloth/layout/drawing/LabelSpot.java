package campcloth.layout.drawing;

import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a label may fit on a shape: the middle of the widest stretch inside it at one of a few heights.
 *
 * @param x middle of the stretch
 * @param y its height
 * @param width its width
 */
record LabelSpot(double x, double y, double width) {

    /** How much wider a stretch farther from the middle must be to be taken. */
    private static final double CLEARLY = 1.15;

    private static final double[] HEIGHTS = {0.5, 0.42, 0.58, 0.34, 0.66, 0.25, 0.75, 0.15, 0.85};

    /** One at each height, the middle heights first. */
    static List<LabelSpot> all(Shape shape) {
        List<LabelSpot> spots = new ArrayList<>();
        for (double part : HEIGHTS) {
            spots.add(widestAt(shape, shape.lowCm() + part * (shape.topCm() - shape.lowCm())));
        }
        return spots;
    }

    static LabelSpot widest(Shape shape) {
        return all(shape).stream()
                .reduce((best, next) -> next.width > CLEARLY * best.width ? next : best)
                .orElseThrow();
    }

    private static LabelSpot widestAt(Shape shape, double height) {
        List<Double> crossings = new ArrayList<>();
        List<Point> points = shape.points();
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            if (a.yCm() <= height != b.yCm() <= height) {
                crossings.add(a.xCm() + (height - a.yCm()) / (b.yCm() - a.yCm()) * (b.xCm() - a.xCm()));
            }
        }
        crossings.sort(Double::compare);
        LabelSpot widest = new LabelSpot(shape.leftCm(), height, 0);
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            double width = crossings.get(i + 1) - crossings.get(i);
            if (width > widest.width) {
                widest = new LabelSpot((crossings.get(i) + crossings.get(i + 1)) / 2, height, width);
            }
        }
        return widest;
    }
}
