package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A cloth as sold: what it is and the figures that are known of it. A figure that is not in the map is not known;
 * {@link Estimates#complete} fills such gaps with marked estimates.
 *
 * @param name how people call it, 1 to 200 characters
 * @param blend what it is made of
 * @param weave how it is bound
 * @param surface plain or raised
 * @param finish what was done to it
 * @param nap whether it has an up and a down, so that pieces must all lie the same way
 * @param stretch whether it stretches
 * @param figures the figures known
 * @param note what else to know, may be empty, at most 2000 characters
 * @param flameTreatment what was said of a treatment against flame
 */
public record Cloth(
        String name,
        Blend blend,
        Weave weave,
        Surface surface,
        Finish finish,
        boolean nap,
        boolean stretch,
        Map<Property, Figure> figures,
        String note,
        FlameTreatment flameTreatment) {

    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_NOTE = 2000;
    private static final String MEASURED_ON_ANOTHER = "measured on the cloth that this one was copied from";

    public Cloth {
        name = name.strip();
        if (name.isEmpty() || name.length() > LONGEST_NAME) {
            throw Refused.of("name", "has " + name.length() + " characters", "give a name of 1 to 200 characters");
        }
        if (note.length() > LONGEST_NOTE) {
            throw Refused.of("note", "has " + note.length() + " characters", "keep it to 2000 characters");
        }
        EnumMap<Property, Figure> copy = new EnumMap<>(Property.class);
        figures.forEach((property, figure) -> {
            property.range().check(figure.value());
            property.range().check(figure.low());
            property.range().check(figure.high());
            copy.put(property, figure);
        });
        figures = Collections.unmodifiableMap(copy);
    }

    /** Cloth that nobody treated against flame. */
    public Cloth(
            String name,
            Blend blend,
            Weave weave,
            Surface surface,
            Finish finish,
            boolean nap,
            boolean stretch,
            Map<Property, Figure> figures,
            String note) {
        this(name, blend, weave, surface, finish, nap, stretch, figures, note, FlameTreatment.NONE);
    }

    /** The figure, where it is known. */
    public Optional<Figure> figure(Property property) {
        return Optional.ofNullable(figures.get(property));
    }

    /**
     * The figure of a cloth that was completed by {@link Estimates}.
     *
     * @throws IllegalStateException where the cloth was not completed
     */
    public Figure required(Property property) {
        return figure(property).orElseThrow(() -> new IllegalStateException(property + " of " + name + " is missing"));
    }

    /** Key of the fibre with the greatest share. */
    public String mainFibre() {
        return blend.shares().get(0).fibre().key();
    }

    public Cloth with(Property property, Figure figure) {
        EnumMap<Property, Figure> more = new EnumMap<>(Property.class);
        more.putAll(figures);
        more.put(property, figure);
        return new Cloth(name, blend, weave, surface, finish, nap, stretch, more, note, flameTreatment);
    }

    /** The same cloth of which these figures are known, and no others. */
    public Cloth with(Map<Property, Figure> others) {
        return new Cloth(name, blend, weave, surface, finish, nap, stretch, others, note, flameTreatment);
    }

    /**
     * The cloth as it is where another like it begins: what was measured on this very cloth is an estimate of the other, its interval
     * as it was; all else stays.
     */
    public Cloth copied() {
        EnumMap<Property, Figure> copied = new EnumMap<>(Property.class);
        figures.forEach((property, figure) -> copied.put(
                property, figure.basis() == Basis.MEASURED ? figure.asEstimate(MEASURED_ON_ANOTHER) : figure));
        return with(copied);
    }

    /** The same cloth under another name, with another note. */
    public Cloth named(String otherName, String otherNote) {
        return new Cloth(otherName, blend, weave, surface, finish, nap, stretch, figures, otherNote, flameTreatment);
    }

    public Cloth with(FlameTreatment treatment) {
        return new Cloth(name, blend, weave, surface, finish, nap, stretch, figures, note, treatment);
    }
}
