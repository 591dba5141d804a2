package campcloth.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.ParseException;
import java.util.Locale;
import java.util.regex.Pattern;
import org.springframework.format.Formatter;

/** Reads numbers as people type them, with point or comma, in the units of the form, and writes them back in the reader's. */
final class TypedNumbers implements Formatter<Double> {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,12}([.,]\\d{0,12})?");
    private static final int ALL_DECIMALS = 12;
    private static final int TURNED_DECIMALS = 2;

    private final Units.Measure measure;

    TypedNumbers(Units.Measure measure) {
        this.measure = measure;
    }

    @Override
    public Double parse(String text, Locale locale) throws ParseException {
        return measure.toCore(number(text), ReadersUnits.typed());
    }

    @Override
    public String print(Double value, Locale locale) {
        Units shown = ReadersUnits.shown();
        return written(measure.fromCore(value, shown), shown == Units.METRIC ? ALL_DECIMALS : TURNED_DECIMALS);
    }

    /** Numbers that have the same unit everywhere, such as degrees. */
    static final class Plain implements Formatter<Double> {
        @Override
        public Double parse(String text, Locale locale) throws ParseException {
            return number(text);
        }

        @Override
        public String print(Double value, Locale locale) {
            return written(value, ALL_DECIMALS);
        }
    }

    private static double number(String text) throws ParseException {
        String stripped = text.strip();
        if (!NUMBER.matcher(stripped).matches()) {
            throw new ParseException("no number", 0);
        }
        return Double.parseDouble(stripped.replace(',', '.'));
    }

    private static String written(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
