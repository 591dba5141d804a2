package campcloth.garment.drawing;

/**
 * How a figure lies on the picture.
 *
 * @param left where the figure's x = 0 lies
 * @param top where the figure's y = 0 lies
 * @param scale how much larger the picture is
 */
record View(double left, double top, double scale) {

    double x(double x) {
        return left + scale * x;
    }

    double y(double y) {
        return top + scale * y;
    }
}
