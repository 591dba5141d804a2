package campcloth.layout.drawing;

import campcloth.layout.Point;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A closed line through points, which may touch itself where it was cut off.
 *
 * @param points in order, counter-clockwise
 */
record Shape(List<Point> points) {

    Shape {
        points = List.copyOf(points);
    }

    double leftCm() {
        return xs().min().orElse(0);
    }

    double rightCm() {
        return xs().max().orElse(0);
    }

    double lowCm() {
        return ys().min().orElse(0);
    }

    double topCm() {
        return ys().max().orElse(0);
    }

    boolean isEmpty() {
        return points.size() < 3;
    }

    private DoubleStream xs() {
        return points.stream().mapToDouble(Point::xCm);
    }

    private DoubleStream ys() {
        return points.stream().mapToDouble(Point::yCm);
    }

    Point at(int index) {
        return points.get(Math.floorMod(index, points.size()));
    }

    double lowestAt(double xCm) {
        return crossings(xCm).min().orElse(Double.POSITIVE_INFINITY);
    }

    double highestAt(double xCm) {
        return crossings(xCm).max().orElse(Double.NEGATIVE_INFINITY);
    }

    private DoubleStream crossings(double x) {
        DoubleStream.Builder crossings = DoubleStream.builder();
        for (int i = 0; i < points.size(); i++) {
            Point a = at(i);
            Point b = at(i + 1);
            if (a.xCm() <= x != b.xCm() <= x) {
                crossings.add(a.yCm() + (x - a.xCm()) / (b.xCm() - a.xCm()) * (b.yCm() - a.yCm()));
            }
        }
        return crossings.build();
    }

    boolean holds(double xCm, double yCm) {
        return crossings(xCm).filter(y -> y > yCm).count() % 2 == 1;
    }
}
