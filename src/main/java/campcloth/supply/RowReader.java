package campcloth.supply;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.ToldMake;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibres;
import campcloth.figure.Figure;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** Reads the rows of one list: every cell of a column that is known, and every reason why one cannot be used. */
final class RowReader {

    private static final int LONGEST_KEY = 200;

    private final HeadReader.Head head;
    private final Compositions compositions;
    private final Meanings meanings;
    private final Fibres fibres;
    private final Map<Property, FigureCell> figureCells = new EnumMap<>(Property.class);
    private final Optional<PriceCell> priceCell;

    RowReader(
            HeadReader.Head head,
            ListOrder order,
            DecimalText decimals,
            Compositions compositions,
            Meanings meanings,
            Fibres fibres) {
        this.head = head;
        this.compositions = compositions;
        this.meanings = meanings;
        this.fibres = fibres;
        head.columns()
                .values()
                .forEach(found -> found.column()
                        .property()
                        .ifPresent(property -> figureCells.put(
                                property, new FigureCell(property, found.unit(), decimals, order.source()))));
        this.priceCell = Optional.ofNullable(head.columns().get(Column.PRICE))
                .map(found -> new PriceCell(
                        found.terms().or(new PriceCell.Terms(order.currency(), Optional.empty())),
                        decimals,
                        order.source()));
    }

    ListRow read(long line, List<String> row) {
        if (row.size() != head.width()) {
            return new ListRow.Bad(
                    line,
                    "",
                    List.of(new Refusal(
                            "(row)",
                            "has " + row.size() + " cells, the head has " + head.width(),
                            "quote cells that hold the sign between cells")));
        }
        return new OneRow(line, row).read();
    }

    /** One row being read. */
    private final class OneRow {

        private final long line;
        private final List<String> row;
        private final List<Refusal> refusals = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();

        OneRow(long line, List<String> row) {
            this.line = line;
            this.row = row;
        }

        ListRow read() {
            Optional<String> clothId = text(Column.CLOTH_ID);
            Optional<String> key = needed(Column.KEY, () -> text(Column.KEY).or(() -> clothId));
            Optional<String> name = needed(Column.NAME, () -> text(Column.NAME));
            Optional<Blend> blend = needed(
                    Column.COMPOSITION,
                    () -> cell(Column.BLEND, fibres::blend).or(() -> cell(Column.COMPOSITION, compositions::blend)));
            key.filter(text -> text.length() > LONGEST_KEY)
                    .ifPresent(text -> refusals.add(
                            new Refusal("key", "has " + text.length() + " characters", "keep it to " + LONGEST_KEY)));
            Optional<Weave> weave = cell(Column.WEAVE, meanings::weave);
            Optional<Surface> surface = cell(Column.SURFACE, meanings::surface);
            Optional<Finish> finish = cell(Column.FINISH, meanings::finish);
            Optional<Boolean> nap = cell(Column.NAP, text -> meanings.yes("nap", ListWords.Kind.NAP, text));
            Optional<Boolean> stretch =
                    cell(Column.STRETCH, text -> meanings.yes("stretch", ListWords.Kind.STRETCH, text));
            Optional<FlameTreatment> flame = cell(Column.FLAME_TREATMENT, meanings::flameTreatment);
            Map<Property, Figure> figures = figures();
            Optional<String> note = note(figures);
            if (!refusals.isEmpty() || key.isEmpty() || name.isEmpty() || blend.isEmpty()) {
                return new ListRow.Bad(line, key.map(RowReader::shortKey).orElse(""), refusals);
            }
            ToldMake make = new ToldMake(weave, surface, finish, nap, stretch);
            Optional<Cloth> cloth = attempt(() -> make.cloth(name.get(), blend.get(), figures, note.orElse(""))
                    .with(flame.orElse(FlameTreatment.NONE)));
            return cloth.<ListRow>map(made -> new ListRow.Good(
                            line, new Listed(key.get(), clothId, made, unsaid(make, note, flame)), notes))
                    .orElseGet(() -> new ListRow.Bad(line, shortKey(key.get()), refusals));
        }

        private <T> Optional<T> needed(Column column, Supplier<Optional<T>> reading) {
            int before = refusals.size();
            Optional<T> value = reading.get();
            if (value.isEmpty() && refusals.size() == before) {
                refusals.add(new Refusal(column.field(), "is empty", "fill it in"));
            }
            return value;
        }

        private Map<Property, Figure> figures() {
            Map<Property, Figure> figures = new EnumMap<>(Property.class);
            for (HeadReader.Found found : head.columns().values()) {
                found.column()
                        .property()
                        .filter(property -> property != Property.PRICE_PER_METRE)
                        .ifPresent(property -> {
                            Optional<Figure> figure = cell(
                                    found.column(), text -> figureCell(property).read(text));
                            figure.ifPresent(known -> figures.put(property, known));
                        });
            }
            return figures;
        }

        /** The note with what has no place of its own: care, and a price in another currency. */
        private Optional<String> note(Map<Property, Figure> figures) {
            List<String> parts = new ArrayList<>();
            text(Column.NOTE).ifPresent(parts::add);
            text(Column.CARE).ifPresent(care -> parts.add("Care: " + care));
            Optional<String> currency = text(Column.CURRENCY);
            priceCell.ifPresent(prices -> cell(Column.PRICE, cell -> price(prices, cell, currency))
                    .ifPresent(price -> {
                        price.figure().ifPresent(figure -> figures.put(Property.PRICE_PER_METRE, figure));
                        price.words().ifPresent(words -> {
                            parts.add(words);
                            notes.add("pricePerMetre: not in EUR, kept in the note");
                        });
                    }));
            return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("\n", parts));
        }

        private PriceCell.Price price(PriceCell prices, String cell, Optional<String> currency) {
            return FigureCell.isWhole(cell)
                    ? new PriceCell.Price(
                            Optional.of(figureCell(Property.PRICE_PER_METRE).read(cell)), Optional.empty())
                    : prices.read(cell, currency);
        }

        private Optional<String> text(Column column) {
            return cell(column, text -> text);
        }

        private <T> Optional<T> cell(Column column, Function<String, T> reading) {
            HeadReader.Found found = head.columns().get(column);
            return found == null
                    ? Optional.empty()
                    : attempt(() -> Cells.text(row, found).map(reading)).flatMap(value -> value);
        }

        private <T> Optional<T> attempt(Supplier<T> reading) {
            try {
                return Optional.of(reading.get());
            } catch (Refused refused) {
                refusals.addAll(refused.refusals());
                return Optional.empty();
            }
        }
    }

    private FigureCell figureCell(Property property) {
        FigureCell cell = figureCells.get(property);
        if (cell == null) {
            throw new IllegalStateException(property + " has no column");
        }
        return cell;
    }

    private static String shortKey(String key) {
        return key.length() > LONGEST_KEY ? key.substring(0, Words.cut(key, LONGEST_KEY)) : key;
    }

    /** A weave that is told says surface, nap and stretch with it. */
    private static Set<Trait> unsaid(ToldMake make, Optional<String> note, Optional<FlameTreatment> flame) {
        Set<Trait> unsaid = EnumSet.noneOf(Trait.class);
        Map<Trait, Boolean> said = new EnumMap<>(Trait.class);
        boolean weave = make.weave().isPresent();
        said.put(Trait.WEAVE, weave);
        said.put(Trait.SURFACE, weave || make.surface().isPresent());
        said.put(Trait.NAP, weave || make.nap().isPresent());
        said.put(Trait.STRETCH, weave || make.stretch().isPresent());
        said.put(Trait.FINISH, make.finish().isPresent());
        said.put(Trait.NOTE, note.isPresent());
        said.put(Trait.FLAME_TREATMENT, flame.isPresent());
        said.forEach((trait, told) -> {
            if (!told) {
                unsaid.add(trait);
            }
        });
        return unsaid;
    }
}
