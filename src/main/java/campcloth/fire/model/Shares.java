package campcloth.fire.model;

/** Comparing shares and masses that come out of sums: a rounding error never moves a cloth over a threshold. */
final class Shares {

    private static final double ROUNDING = 1e-9;

    private Shares() {}

    static boolean above(double value, double threshold) {
        return value > threshold + ROUNDING;
    }

    static boolean atLeast(double value, double threshold) {
        return value >= threshold - ROUNDING;
    }
}
