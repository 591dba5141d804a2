package campcloth.pages.cloths;

import campcloth.cloth.Property;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import campcloth.pages.Units;

/** Figures of cloths as they are read, in the reader's units where those differ. Prices of the catalogue are in EUR. */
final class Amounts {

    private static final String CURRENCY = "EUR";

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

    /** Both ends; empty for a figure without spread. */
    static String interval(String field, String unit, Figure figure, Units units) {
        return figure.low() == figure.high()
                ? ""
                : of(field, unit, figure.low(), units) + " – " + of(field, unit, figure.high(), units);
    }

    private static String readable(String unit) {
        return unit.replace("m2", "m²").replace("um", "µm");
    }
}
