package campcloth.supply;

import campcloth.cloth.Cloth;
import campcloth.cloth.Finish;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Property;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.fibre.Blend;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How a row joins a cloth that is kept: the row is compared with what the list said before. Only what the list says anew is
 * taken over; what a user changed since stays as the user left it, and the notes say so. What a row no longer says stays too.
 */
public final class ListMerge {

    /**
     * The outcome.
     *
     * @param cloth the cloth as it is to be kept
     * @param said what the list has said of it by now
     * @param notes where the list says something else than what stays
     */
    public record Merged(Cloth cloth, Cloth said, List<String> notes) {

        public Merged {
            notes = List.copyOf(notes);
        }
    }

    private final Cloth now;
    private final Cloth before;
    private final Listed row;
    private final List<String> notes = new ArrayList<>();

    private ListMerge(Cloth now, Cloth before, Listed row) {
        this.now = now;
        this.before = before;
        this.row = row;
    }

    /**
     * Joins a row to a cloth.
     *
     * @param now the cloth as it is kept
     * @param before what the list said of it the last time
     */
    public static Merged of(Cloth now, Cloth before, Listed row) {
        ListMerge merge = new ListMerge(now, before, row);
        Cloth said = merge.said();
        return new Merged(merge.joined(said), said, merge.notes);
    }

    private Cloth said() {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        figures.putAll(before.figures());
        row.cloth().figures().forEach((property, figure) -> {
            Optional<Figure> earlier = before.figure(property);
            figures.put(property, sameBare(figure, earlier) ? earlier.orElseThrow() : figure);
        });
        return made(trait -> row.unsaid().contains(trait) ? trait.of(before) : trait.of(row.cloth()), figures);
    }

    private Cloth joined(Cloth said) {
        Map<Property, Figure> figures = new EnumMap<>(Property.class);
        figures.putAll(now.figures());
        for (Property property : row.cloth().figures().keySet()) {
            Figure told = said.figure(property).orElseThrow();
            if (isTaken(property, told)) {
                figures.put(property, told);
            }
        }
        return made(trait -> trait(trait, said), figures);
    }

    /** Whether the list's figure replaces the one that is kept. */
    private boolean isTaken(Property property, Figure told) {
        Optional<Figure> current = now.figure(property);
        if (Optional.of(told).equals(before.figure(property))
                || Optional.of(told).equals(current)) {
            return false;
        }
        boolean measured = current.filter(f -> f.basis() == Basis.MEASURED && told.basis() != Basis.MEASURED)
                .isPresent();
        if (current.equals(before.figure(property)) && !measured) {
            return true;
        }
        notes.add(property.field() + ": stays "
                + current.map(f -> Words.number(f.value())).orElse("left out")
                + (measured ? " as it was measured" : " as you changed it") + "; the list says "
                + Words.number(told.value()));
        return false;
    }

    private Object trait(Trait trait, Cloth said) {
        Object current = trait.of(now);
        Object told = trait.of(said);
        if (told.equals(trait.of(before)) || told.equals(current)) {
            return current;
        }
        if (current.equals(trait.of(before))) {
            return told;
        }
        notes.add(trait.field() + ": stays as you changed it; the list says "
                + Words.quoted(told instanceof Blend blend ? blend.words() : Objects.toString(told)));
        return current;
    }

    /** Whether a bare number says no more than the figure that is there. */
    private static boolean sameBare(Figure told, Optional<Figure> earlier) {
        return told.source().startsWith(ListOrder.SOURCE)
                && told.low() == told.high()
                && earlier.filter(figure -> figure.value() == told.value() && !figure.equals(told))
                        .isPresent();
    }

    private static Cloth made(java.util.function.Function<Trait, Object> of, Map<Property, Figure> figures) {
        Weave weave = (Weave) of.apply(Trait.WEAVE);
        return new Cloth(
                (String) of.apply(Trait.NAME),
                (Blend) of.apply(Trait.BLEND),
                weave,
                weave.isPile() ? Surface.RAISED : (Surface) of.apply(Trait.SURFACE),
                (Finish) of.apply(Trait.FINISH),
                (Boolean) of.apply(Trait.NAP),
                (Boolean) of.apply(Trait.STRETCH),
                figures,
                (String) of.apply(Trait.NOTE),
                (FlameTreatment) of.apply(Trait.FLAME_TREATMENT));
    }
}
