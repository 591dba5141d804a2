package campcloth.pages.cloths;

import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import campcloth.pages.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/** Figures of cloths as they are read, in the reader's units where those differ. Prices of the catalogue are in EUR. */
final class Amounts {

    private static final String CURRENCY = "EUR";

    /** Digits of an estimate: its interval is seldom narrower than a tenth of it. */
    private static final MathContext ESTIMATE = new MathContext(3, RoundingMode.HALF_UP);

    /** A number, with its fraction in inches, that a unit follows. */
    private static final Pattern BEHIND_NUMBER = Pattern.compile("^-?(?:(?:\\d+ )?\\d/\\d|[0-9.]+)");

    private Amounts() {}

    static String of(Property property, double value, Units units) {
        return of(property.field(), property.unit(), value, units);
    }

    static String of(String field, String unit, double value, Units units) {
        return switch (field) {
            case "weightGsm" -> units.weight(value);
            case "widthCm" -> units.length(value);
            case "pricePerMetre" -> units.price(value, CURRENCY);
            case "pricePerM2", "pricePerUsableM2" -> Words.fixed(value, 2) + " " + CURRENCY + "/m²";
            case "bastRoughness" -> Words.fixed(value, 2);
            default -> Words.number(value) + " " + readable(unit);
        };
    }

    /** A figure's value: an estimate with no more digits than it deserves. */
    static String of(String field, String unit, Figure figure, Units units) {
        return of(field, unit, told(figure, figure.value()), units);
    }

    /** Both ends, with their unit once; empty for a figure without spread. */
    static String interval(String field, String unit, Figure figure, Units units) {
        if (figure.low() == figure.high()) {
            return "";
        }
        String low = of(field, unit, told(figure, figure.low()), units);
        String high = of(field, unit, told(figure, figure.high()), units);
        String sign = BEHIND_NUMBER.matcher(high).replaceFirst("");
        return low.endsWith(sign) ? low.substring(0, low.length() - sign.length()) + " – " + high : low + " – " + high;
    }

    private static double told(Figure figure, double value) {
        return figure.basis() == Basis.ESTIMATED
                ? new BigDecimal(value).round(ESTIMATE).doubleValue()
                : value;
    }

    /** A unit of the core as it is written in print. */
    static String readable(String unit) {
        return unit.replace("m2", "m²").replace("um", "µm");
    }
}
