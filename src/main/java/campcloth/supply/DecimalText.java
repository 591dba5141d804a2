package campcloth.supply;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.regex.Pattern;

/**
 * Numbers as lists write them, with decimal point or decimal comma. Where one sign stands before exactly three digits it may part
 * thousands or decimals: a comma then is refused, and so is a point in a list that is written with semicolons, as lists with decimal
 * commas are. Nothing is guessed.
 *
 * @param pointMayGroup whether a point may part thousands in this list
 */
record DecimalText(boolean pointMayGroup) {

    /** A number of either notation, without unit. */
    static final String NUMBER = "[-\u2212]?\\d[\\d.,]*";

    private static final Pattern PLAIN = Pattern.compile("-?\\d+");
    private static final Pattern ONE_SIGN = Pattern.compile("-?\\d+[.,]\\d+");
    private static final Pattern THOUSANDS_OR_DECIMALS = Pattern.compile("-?[1-9]\\d{0,2}[.,]\\d{3}");
    private static final Pattern GROUPED_BY_COMMA = Pattern.compile("-?\\d{1,3}(,\\d{3})+(\\.\\d+)?");
    private static final Pattern GROUPED_BY_POINT = Pattern.compile("-?\\d{1,3}(\\.\\d{3})+(,\\d+)?");

    private static final int MOST_DIGITS = 30;

    double read(String field, String written) {
        String text = written.strip().replace('\u2212', '-');
        if (text.length() > MOST_DIGITS) {
            throw notANumber(field, written);
        }
        if (PLAIN.matcher(text).matches()) {
            return Double.parseDouble(text);
        }
        if (THOUSANDS_OR_DECIMALS.matcher(text).matches() && (text.contains(",") || pointMayGroup)) {
            throw Refused.of(
                    field,
                    Words.quoted(written) + " may mean thousands or decimals",
                    "write it without the sign between thousands, or with another number of decimals");
        }
        if (ONE_SIGN.matcher(text).matches()) {
            return Double.parseDouble(text.replace(',', '.'));
        }
        if (GROUPED_BY_COMMA.matcher(text).matches()) {
            return Double.parseDouble(text.replace(",", ""));
        }
        if (GROUPED_BY_POINT.matcher(text).matches()) {
            return Double.parseDouble(text.replace(".", "").replace(',', '.'));
        }
        throw notANumber(field, written);
    }

    private static Refused notANumber(String field, String written) {
        return Refused.of(field, Words.quoted(written) + " is not a number", "write digits, as 12.5 or 12,5");
    }
}
