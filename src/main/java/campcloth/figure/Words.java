package campcloth.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers and words as people read them: the same everywhere, whatever the locale of the machine. */
public final class Words {

    private static final int LONGEST_PLAIN = 16;
    private static final int LONGEST_SHOWN = 60;

    private Words() {}

    /** At most four significant figures, no exponent, no trailing zeros: 0.3, 12.5, 1200. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        String quick = Digits.number(value);
        return quick.equals(Digits.UNSURE) ? numberExactly(value) : quick;
    }

    private static String numberExactly(double value) {
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
        String quick = Digits.fixed(value, decimals);
        return quick.equals(Digits.UNSURE) ? fixedExactly(value, decimals) : quick;
    }

    private static String fixedExactly(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? BigDecimal.ZERO.setScale(decimals).toPlainString() : rounded.toPlainString();
    }

    /** What somebody wrote, between quotation marks, for refusals: cut where it is long. */
    public static String quoted(String written) {
        return "'" + shortened(written) + "'";
    }

    /** At most 60 characters. */
    public static String shortened(String written) {
        return written.length() > LONGEST_SHOWN ? written.substring(0, cut(written, LONGEST_SHOWN)) + "..." : written;
    }

    /** Where to cut a text: there, or one before where that would leave half of a surrogate pair. */
    public static int cut(String text, int at) {
        return at > 0 && at < text.length() && Character.isSurrogatePair(text.charAt(at - 1), text.charAt(at))
                ? at - 1
                : at;
    }

    /** Whether a text can be kept: no control characters but tab and line ends, no half of a surrogate pair. */
    public static boolean canBeKept(String text) {
        return text.codePoints().noneMatch(Words::isUnkeepable);
    }

    private static boolean isUnkeepable(int codePoint) {
        boolean control =
                Character.isISOControl(codePoint) && codePoint != '\t' && codePoint != '\n' && codePoint != '\r';
        return control || codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
    }
}
