package campcloth.supply;

import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The figure in a cell: {@code 190}, {@code 5.6 oz/yd2}, {@code 148-150 cm}, {@code 150 cm / 59"}, or written whole as our exports
 * do, {@code 190 (180..200) TYPICAL where from}. A unit in the cell goes before that of the column's head; without either the cell is
 * refused. What the list says counts as declared.
 */
final class FigureCell {

    /** Written whole; the source may be any words. */
    private static final Pattern WHOLE = Pattern.compile(
            "(-?[0-9.]+(?:E-?[0-9]+)?)\\s*(?:\\((-?[0-9.]+(?:E-?[0-9]+)?)\\.\\.(-?[0-9.]+(?:E-?[0-9]+)?)\\))?\\s+"
                    + "(MEASURED|DECLARED|TYPICAL|ESTIMATED)\\s(.*)",
            Pattern.DOTALL);

    private static final Pattern SPAN = Pattern.compile("(" + DecimalText.NUMBER + ")\\s*([^\\d\\s-][^\\d-]*?)?\\s*"
            + "(?:(?:-|\u2013|to|bis|\u00e0)\\s*(" + DecimalText.NUMBER + ")\\s*([^\\d\\s][^\\d]*?[23\u00b2]?)?)?");
    private static final Pattern ONE = Pattern.compile("(" + DecimalText.NUMBER + ")\\s*(\\D.*)?");

    /** Two ways of saying one length may differ by what rounding to whole inches or centimetres makes, 1 %. */
    private static final double SAME = 0.01;

    private final Property property;
    private final Optional<Unit> headUnit;
    private final DecimalText decimals;
    private final String source;

    FigureCell(Property property, Optional<Unit> headUnit, DecimalText decimals, String source) {
        this.property = property;
        this.headUnit = headUnit;
        this.decimals = decimals;
        this.source = source;
    }

    /** Whether a cell is written whole, with its basis. */
    static boolean isWhole(String cell) {
        return WHOLE.matcher(cell).matches();
    }

    Figure read(String cell) {
        Matcher whole = WHOLE.matcher(cell);
        Figure figure = whole.matches() ? whole(whole) : declared(cell.strip());
        property.range().check(figure.value());
        property.range().check(figure.low());
        property.range().check(figure.high());
        return figure;
    }

    private Figure whole(Matcher parts) {
        double value = number(parts.group(1));
        return Refused.within(
                field(),
                () -> new Figure(
                        value,
                        parts.group(2) == null ? value : number(parts.group(2)),
                        parts.group(3) == null ? value : number(parts.group(3)),
                        Basis.valueOf(parts.group(4)),
                        parts.group(5)));
    }

    private double number(String written) {
        try {
            return Double.parseDouble(written);
        } catch (NumberFormatException none) {
            throw Refused.of(
                    field(), Words.quoted(written) + " is not a number", "write digits with one decimal point");
        }
    }

    private Figure declared(String cell) {
        List<Figure> said = new ArrayList<>();
        for (String part : cell.split("\\s*/\\s*(?=\\d)|;|\\|", -1)) {
            said.add(one(part.strip()));
        }
        Figure first = said.get(0);
        for (Figure other : said) {
            if (Math.abs(other.value() - first.value()) > SAME * Math.abs(first.value())) {
                throw Refused.of(
                        field(),
                        Words.quoted(cell) + " says two different things: " + Words.number(first.value()) + " and "
                                + Words.number(other.value()) + " " + property.unit(),
                        "keep the one that holds");
            }
        }
        return first;
    }

    private Figure one(String text) {
        Matcher span = SPAN.matcher(text);
        if (span.matches() && span.group(3) != null) {
            Unit unit = unit(span.group(4) == null ? span.group(2) : span.group(4), text);
            double low = unit.convert(decimals.read(field(), span.group(1)));
            double high = unit.convertHigh(decimals.read(field(), span.group(3)));
            return figure((low + high) / 2, low, high, text);
        }
        Matcher one = ONE.matcher(text);
        if (!one.matches()) {
            throw Refused.of(
                    field(),
                    Words.quoted(text) + " is not a number",
                    "write a number and its unit, or leave the cell empty");
        }
        Unit unit = unit(one.group(2), text);
        double value = decimals.read(field(), one.group(1));
        double converted = unit.convert(value);
        return figure(converted, converted, Math.max(converted, unit.convertHigh(value)), text);
    }

    private Figure figure(double value, double low, double high, String text) {
        if (low > high) {
            throw Refused.of(field(), Words.quoted(text) + " falls", "write the smaller number first");
        }
        return new Figure(value, low, high, Basis.DECLARED, source);
    }

    private Unit unit(@org.jspecify.annotations.Nullable String written, String cell) {
        if (written == null || written.isBlank()) {
            return headUnit.orElseThrow(() -> Refused.of(
                    field(),
                    Words.quoted(cell) + " has no unit, and the head of the column names none",
                    "write the unit in the head or in the cell: one of " + Unit.known(property)));
        }
        return Unit.of(property, written)
                .orElseThrow(() -> Refused.of(
                        field(),
                        Words.quoted(written.strip()) + " is no unit known for it",
                        "write one of " + Unit.known(property)));
    }

    private String field() {
        return property.field();
    }
}
