package campcloth.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them: the same everywhere, whatever the locale of the machine. */
public final class Words {

    private Words() {}

    /** At most four significant figures, no exponent, no trailing zeros: 0.3, 12.5, 1200. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(4, RoundingMode.HALF_UP));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** With exactly the given number of decimals: 1.0, 2.35. */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals).toPlainString() : rounded.toPlainString();
    }
}
