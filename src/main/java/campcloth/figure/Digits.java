package campcloth.figure;

/**
 * Numbers rounded half up and written by plain arithmetic, since a page asks for thousands of them. Where a product in double
 * precision does not surely tell on which side of the half a number lies, nothing is written: {@link Words} then takes the long way.
 */
final class Digits {

    /** Stands for what has to be worked out exactly. */
    static final String UNSURE = "";

    private static final double[] POWERS = {1, 10, 100, 1000, 1e4, 1e5, 1e6};

    /** A product up to here is off by less than {@link #NEAR_THE_HALF}. */
    private static final double MOST = 1e8;

    private static final double NEAR_THE_HALF = 1e-6;

    /** From which number on four significant figures have so many decimals, 0 first. */
    private static final double[] FOUR_FIGURES = {1000, 100, 10, 1, 0.1, 0.01, 0.001};

    private static final double MORE_FIGURES = 10_000;

    private Digits() {}

    /** With exactly so many decimals. */
    static String fixed(double value, int decimals) {
        return decimals < POWERS.length ? written(value, decimals, decimals) : UNSURE;
    }

    /** With two decimals at most. */
    static String shortOf(double value) {
        return written(value, 2, 0);
    }

    /** At most four significant figures, no trailing zeros. */
    static String number(double value) {
        double size = Math.abs(value);
        if (!(size < MORE_FIGURES)) {
            return UNSURE;
        }
        for (int decimals = 0; decimals < FOUR_FIGURES.length; decimals++) {
            if (size >= FOUR_FIGURES[decimals]) {
                return written(value, decimals, 0);
            }
        }
        return UNSURE;
    }

    /** @param leastDecimals zeros at the end are left out down to so many */
    private static String written(double value, int decimals, int leastDecimals) {
        double product = Math.abs(value) * POWERS[decimals];
        if (!(product < MOST)) {
            return UNSURE;
        }
        long digits = (long) product;
        double rest = product - digits;
        if (Math.abs(rest - 0.5) < NEAR_THE_HALF) {
            return UNSURE;
        }
        digits += rest > 0.5 ? 1 : 0;
        boolean negative = value < 0 && digits > 0;
        int shown = decimals;
        while (shown > leastDecimals && digits % 10 == 0) {
            digits /= 10;
            shown--;
        }
        StringBuilder text = new StringBuilder(16).append(digits);
        if (shown > 0) {
            while (text.length() <= shown) {
                text.insert(0, '0');
            }
            text.insert(text.length() - shown, '.');
        }
        return negative ? text.insert(0, '-').toString() : text.toString();
    }
}
