package campcloth.layout.search;

import java.util.Arrays;

/** A simple polygon, counter-clockwise, coordinates in cm. */
public final class Ring {

    final double[] x;
    final double[] y;
    final double left;
    final double low;
    final double right;
    final double high;

    private Ring(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.left = Arrays.stream(x).min().orElseThrow();
        this.right = Arrays.stream(x).max().orElseThrow();
        this.low = Arrays.stream(y).min().orElseThrow();
        this.high = Arrays.stream(y).max().orElseThrow();
    }

    public static Ring of(double[] x, double[] y) {
        return new Ring(x.clone(), y.clone());
    }

    int size() {
        return x.length;
    }

    double width() {
        return right - left;
    }

    double height() {
        return high - low;
    }

    double area() {
        double twice = 0;
        for (int i = 1; i + 1 < size(); i++) {
            twice += turn(0, i, i + 1);
        }
        return twice / 2;
    }

    /** Twice the signed area of the triangle of three corners: positive for a turn to the left. */
    double turn(int a, int b, int c) {
        return (x[b] - x[a]) * (y[c] - y[a]) - (y[b] - y[a]) * (x[c] - x[a]);
    }

    /** Sine of the turn at the middle of three corners, 0 where two of them coincide. */
    double bend(int a, int b, int c) {
        double lengths = Math.hypot(x[b] - x[a], y[b] - y[a]) * Math.hypot(x[c] - x[b], y[c] - y[b]);
        return lengths == 0 ? 0 : turn(a, b, c) / lengths;
    }

    boolean isConvex() {
        for (int i = 0; i < size(); i++) {
            if (bend(previous(i), i, next(i)) < -FLAT) {
                return false;
            }
        }
        return true;
    }

    int next(int corner) {
        return corner + 1 == size() ? 0 : corner + 1;
    }

    int previous(int corner) {
        return corner == 0 ? size() - 1 : corner - 1;
    }

    /** The ring through some of the corners. */
    Ring through(int[] corners) {
        return new Ring(
                Arrays.stream(corners).mapToDouble(i -> x[i]).toArray(),
                Arrays.stream(corners).mapToDouble(i -> y[i]).toArray());
    }

    /** Without corners at which the outline runs straight on. */
    Ring withoutFlatCorners() {
        int[] kept = new int[size()];
        int count = 0;
        for (int i = 0; i < size(); i++) {
            int before = count == 0 ? previous(i) : kept[count - 1];
            if (Math.abs(bend(before, i, next(i))) > FLAT) {
                kept[count++] = i;
            }
        }
        return count < 3 || count == size() ? this : through(Arrays.copyOf(kept, count));
    }

    /** With the lower left corner of its box at the origin. */
    Ring atOrigin() {
        return new Ring(
                Arrays.stream(x).map(value -> value - left).toArray(),
                Arrays.stream(y).map(value -> value - low).toArray());
    }

    /** Reflected in the origin, which keeps the direction. */
    Ring negated() {
        return new Ring(
                Arrays.stream(x).map(value -> -value).toArray(),
                Arrays.stream(y).map(value -> -value).toArray());
    }

    /** Lowest corner, the leftmost of several. */
    int lowestCorner() {
        int lowest = 0;
        for (int i = 1; i < size(); i++) {
            if (y[i] < y[lowest] || y[i] == y[lowest] && x[i] < x[lowest]) {
                lowest = i;
            }
        }
        return lowest;
    }

    /** Whether both go through the same corners, to within a distance, wherever they start. */
    boolean matches(Ring other, double within) {
        if (size() != other.size()) {
            return false;
        }
        for (int shift = 0; shift < size(); shift++) {
            int i = 0;
            while (i < size()
                    && Math.abs(x[i] - other.x[(i + shift) % size()]) <= within
                    && Math.abs(y[i] - other.y[(i + shift) % size()]) <= within) {
                i++;
            }
            if (i == size()) {
                return true;
            }
        }
        return false;
    }

    /** Sine of a bend that counts as none. */
    static final double FLAT = 1e-12;
}
