package campcloth.layout.drawing;

import campcloth.layout.Point;

/**
 * A stretch of the sheet on paper.
 *
 * @param clip what of the sheet is shown
 * @param leftMm where its left edge lies on paper
 * @param bottomMm where its lower edge lies on paper
 * @param mmPerCm mm on paper for a cm of cloth
 */
record Window(Clip clip, double leftMm, double bottomMm, double mmPerCm) {

    double x(double xCm) {
        return leftMm + (xCm - clip.leftCm()) * mmPerCm;
    }

    double y(double yCm) {
        return bottomMm - (yCm - clip.lowCm()) * mmPerCm;
    }

    double rightMm() {
        return x(clip.rightCm());
    }

    double topMm() {
        return y(clip.topCm());
    }

    Point onPaper(Point point) {
        return new Point(x(point.xCm()), y(point.yCm()));
    }

    Shape onPaper(Shape shape) {
        return new Shape(shape.points().stream().map(this::onPaper).toList());
    }
}
