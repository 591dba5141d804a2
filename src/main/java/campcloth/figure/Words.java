package campcloth.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them: the same everywhere, whatever the locale of the machine. */
public final class Words {

    private static final int LONGEST_PLAIN = 16;

    private Words() {}

    /** At most four significant figures, no exponent, no trailing zeros: 0.3, 12.5, 1200. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_UP));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** As it is, for refusals: no digit is lost, and what is too long is cut to an exponent. */
    public static String exact(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        String plain = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return plain.length() > LONGEST_PLAIN ? Double.toString(value) : plain;
    }

    /** With exactly the given number of decimals: 1.0, 2.35. */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals).toPlainString() : rounded.toPlainString();
    }
}
