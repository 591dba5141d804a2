package campcloth.supply;

import campcloth.cloth.Property;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds out what each column of a list holds: by the words of its head, and a unit or a currency behind them. */
final class HeadReader {

    static final int MOST_COLUMNS = 200;

    private static final Pattern BRACKETS = Pattern.compile("(.*?)[(\\[]\\s*([^)\\]]*?)\\s*[)\\]]\\s*");
    private static final Pattern WORDS = Pattern.compile("[\\p{L}\\p{M}\\p{N}\\s.'-]+");
    private static final Pattern BREAK = Pattern.compile("[\\s,:/]+");

    /**
     * A column of the list.
     *
     * @param at which one, counted from 0
     * @param unit the unit for cells that name none
     * @param terms currency and length of a price
     */
    record Found(int at, Column column, Optional<Unit> unit, PriceCell.Terms terms) {}

    /** The head as reported, and where each column stands. */
    record Head(ListHead told, Map<Column, Found> columns, int width) {}

    private final ListWords words;

    HeadReader(ListWords words) {
        this.words = words;
    }

    /** How many of the heads name a column that is known. */
    long known(List<String> headers) {
        return headers.stream().filter(header -> found(0, header).isPresent()).count();
    }

    Head read(char delimiter, List<String> headers) {
        if (headers.size() > MOST_COLUMNS) {
            throw Refused.of(
                    "(header)", "has " + headers.size() + " columns", "keep at most " + MOST_COLUMNS + " columns");
        }
        Map<Column, Found> columns = new EnumMap<>(Column.class);
        List<ListHead.Recognised> recognised = new ArrayList<>();
        List<ListHead.Ignored> ignored = new ArrayList<>();
        List<Refusal> wrong = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            String header = headers.get(i);
            if (header.indexOf(Cells.UNDECODABLE) >= 0 || header.indexOf('\0') >= 0) {
                wrong.add(new Refusal(
                        "(header)", "column " + (i + 1) + " holds bytes that are no UTF-8", "save the list as UTF-8"));
                continue;
            }
            Optional<Found> found = found(i, header);
            if (found.isEmpty()) {
                ignored.add(new ListHead.Ignored(Words.shortened(header), because(header)));
                continue;
            }
            Found before = columns.putIfAbsent(found.get().column(), found.get());
            if (before != null) {
                wrong.add(new Refusal(
                        found.get().column().field(),
                        "the columns " + Words.quoted(headers.get(before.at())) + " and " + Words.quoted(header)
                                + " hold the same thing",
                        "keep one of them"));
            }
            recognised.add(told(header, found.get()));
        }
        needed(columns, wrong);
        if (!wrong.isEmpty()) {
            throw new Refused(wrong);
        }
        return new Head(new ListHead(delimiter, recognised, ignored), columns, headers.size());
    }

    private static void needed(Map<Column, Found> columns, List<Refusal> wrong) {
        for (Column column : List.of(Column.KEY, Column.NAME, Column.COMPOSITION)) {
            boolean there = columns.containsKey(column)
                    || column == Column.COMPOSITION && columns.containsKey(Column.BLEND)
                    || column == Column.KEY && columns.containsKey(Column.CLOTH_ID);
            if (!there) {
                wrong.add(new Refusal(
                        column.field(),
                        "no column of the list says it",
                        "head one of them " + Words.quoted(example(column))));
            }
        }
        if (columns.containsKey(Column.COMPOSITION) && columns.containsKey(Column.BLEND)) {
            wrong.add(new Refusal("composition", "stands beside a column blend", "keep one of them"));
        }
    }

    private static String example(Column column) {
        return switch (column) {
            case KEY -> "article no";
            case NAME -> "name";
            default -> "composition";
        };
    }

    private static ListHead.Recognised told(String header, Found found) {
        Optional<String> currency = found.terms().currency().map(code -> code + " ");
        Optional<String> unit = found.unit().or(() -> found.terms().per()).map(Unit::words);
        return new ListHead.Recognised(
                Words.shortened(header),
                found.column(),
                currency.isPresent() || unit.isPresent()
                        ? Optional.of((currency.orElse("") + unit.orElse("")).strip())
                        : Optional.empty());
    }

    private String because(String header) {
        if (header.isBlank()) {
            return "has no head";
        }
        return parts(header).stream()
                .filter(parts -> words.header(parts.get(0)).isPresent())
                .findFirst()
                .map(parts -> Words.quoted(parts.get(1)) + " is no unit known for it")
                .orElse("no word known here heads it");
    }

    private Optional<Found> found(int at, String header) {
        for (List<String> parts : parts(header)) {
            Optional<Found> measured = words.header(parts.get(0)).flatMap(named -> withUnit(at, named, parts.get(1)));
            if (measured.isPresent()) {
                return measured;
            }
        }
        return words.header(header).map(named -> found(at, named, named.unit(), PriceCell.UNTOLD));
    }

    private static Optional<Found> withUnit(int at, ListWords.Named named, String rest) {
        String unit = rest.replaceFirst("(?i)^in\\s+", "");
        Optional<Property> property = named.column().property();
        if (property.isEmpty() || unit.isBlank()) {
            return Optional.empty();
        }
        if (named.column() == Column.PRICE) {
            return PriceCell.terms(unit).map(terms -> found(at, named, named.unit(), terms));
        }
        return Unit.of(property.get(), unit).map(one -> found(at, named, Optional.of(one), PriceCell.UNTOLD));
    }

    private static Found found(int at, ListWords.Named named, Optional<Unit> unit, PriceCell.Terms terms) {
        return named.column() == Column.PRICE
                ? new Found(
                        at,
                        Column.PRICE,
                        Optional.empty(),
                        new PriceCell.Terms(terms.currency(), terms.per().or(() -> unit)))
                : new Found(at, named.column(), unit, PriceCell.UNTOLD);
    }

    /** The ways to part a head into words and what follows them: at brackets first, then at each break, longest words first. */
    private static List<List<String>> parts(String header) {
        List<List<String>> ways = new ArrayList<>();
        Matcher brackets = BRACKETS.matcher(header);
        if (brackets.matches()) {
            ways.add(List.of(brackets.group(1), brackets.group(2)));
        }
        Matcher breaks = BREAK.matcher(header);
        List<List<String>> atBreaks = new ArrayList<>();
        while (breaks.find()) {
            atBreaks.add(
                    0,
                    List.of(
                            header.substring(0, breaks.start()),
                            header.substring(breaks.start()).strip()));
        }
        for (List<String> way : atBreaks) {
            if (!WORDS.matcher(way.get(0)).matches()) {
                continue;
            }
            ways.add(List.of(way.get(0), way.get(1).replaceFirst("^[,:]\\s*", "")));
        }
        return ways;
    }
}
