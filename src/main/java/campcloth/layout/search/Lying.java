package campcloth.layout.search;

/** The shapes that lie on the strip so far, first to last. */
final class Lying {

    private final Shape[] shapes;
    private final double[] x;
    private final double[] y;
    private int count;

    Lying(int most) {
        shapes = new Shape[most];
        x = new double[most];
        y = new double[most];
    }

    int count() {
        return count;
    }

    Shape shape(int i) {
        return shapes[i];
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    void add(Shape shape, double atX, double atY) {
        shapes[count] = shape;
        x[count] = atX;
        y[count++] = atY;
    }

    void keepFirst(int some) {
        count = some;
    }
}
