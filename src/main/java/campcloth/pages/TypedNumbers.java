package campcloth.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.ParseException;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.springframework.format.AnnotationFormatterFactory;
import org.springframework.format.Formatter;
import org.springframework.format.Parser;
import org.springframework.format.Printer;

/** Reads numbers as people type them, with point or comma, in the units of the form, and writes them back in the reader's. */
final class TypedNumbers implements AnnotationFormatterFactory<TypedIn> {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,12}([.,]\\d{0,12})?");

    /** For numbers that have the same unit everywhere, such as degrees. */
    static final Formatter<Double> PLAIN = new Formatter<>() {
        @Override
        public Double parse(String text, Locale locale) throws ParseException {
            return number(text);
        }

        @Override
        public String print(Double value, Locale locale) {
            return written(value, 12);
        }
    };

    @Override
    public Set<Class<?>> getFieldTypes() {
        return Set.of(Double.class);
    }

    @Override
    public Printer<?> getPrinter(TypedIn annotation, Class<?> fieldType) {
        return (Printer<Double>) (value, locale) -> {
            Units shown = ReadersUnits.shown();
            return written(annotation.value().fromCore(value, shown), shown == Units.METRIC ? 12 : 2);
        };
    }

    @Override
    public Parser<?> getParser(TypedIn annotation, Class<?> fieldType) {
        return (text, locale) -> annotation.value().toCore(number(text), ReadersUnits.typed());
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
