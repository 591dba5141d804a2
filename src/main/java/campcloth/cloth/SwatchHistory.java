package campcloth.cloth;

import campcloth.cloth.swatch.Plausibility;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The swatches of a cloth and what was known of it without them. Of every figure the newest swatch that has it stands; without
 * one, what was known before.
 *
 * @param newestFirst swatches by day of measurement, then by order of telling
 * @param before figures without any swatch
 */
public record SwatchHistory(List<KeptSwatch> newestFirst, Map<Property, Figure> before) {

    public SwatchHistory {
        newestFirst = List.copyOf(newestFirst);
        before = Map.copyOf(before);
    }

    public static SwatchHistory of(Collection<KeptSwatch> swatches, Map<Property, Figure> before) {
        return new SwatchHistory(
                swatches.stream().sorted(KeptSwatch.NEWEST_FIRST).toList(), before);
    }

    /** The figures that swatches give. */
    public Map<Property, Figure> measured() {
        Map<Property, Figure> measured = new EnumMap<>(Property.class);
        for (KeptSwatch kept : newestFirst) {
            SwatchFigures.of(kept.swatch()).figures().forEach(measured::putIfAbsent);
        }
        return measured;
    }

    /** The figures of a swatch that no newer one has. */
    public List<Property> standing(KeptSwatch swatch) {
        Set<Property> standing = EnumSet.allOf(Property.class);
        standing.retainAll(SwatchFigures.of(swatch.swatch()).figures().keySet());
        newestFirst.stream()
                .takeWhile(newer -> !newer.id().equals(swatch.id()))
                .forEach(newer -> standing.removeAll(
                        SwatchFigures.of(newer.swatch()).figures().keySet()));
        return List.copyOf(standing);
    }

    public Optional<KeptSwatch> byId(String id) {
        return newestFirst.stream().filter(kept -> kept.id().equals(id)).findFirst();
    }

    /** As it was when a swatch was measured: with the older swatches alone. */
    public SwatchHistory olderThan(KeptSwatch swatch) {
        return new SwatchHistory(
                newestFirst.stream()
                        .filter(other -> KeptSwatch.NEWEST_FIRST.compare(other, swatch) > 0)
                        .toList(),
                before);
    }

    /** What is strange about a swatch beside the one before it, or beside what was known before any; in sentences. */
    public List<String> doubts(KeptSwatch swatch) {
        Map<Property, Figure> known = olderThan(swatch).figures();
        List<String> doubts = new ArrayList<>();
        SwatchFigures.of(swatch.swatch())
                .figures()
                .forEach((property, measured) -> Optional.ofNullable(known.get(property))
                        .flatMap(figure -> Plausibility.doubt(property, measured, figure))
                        .ifPresent(doubts::add));
        return doubts;
    }

    /** All figures that are known: a swatch's beats what was known before it, unless {@link Basis} says otherwise. */
    public Map<Property, Figure> figures() {
        Map<Property, Figure> all = new EnumMap<>(Property.class);
        all.putAll(before);
        measured()
                .forEach((property, figure) -> all.merge(
                        property,
                        figure,
                        (known, measured) -> known.basis().beats(measured.basis()) ? known : measured));
        return all;
    }

    /**
     * What is known without swatches once somebody told figures anew: figures that swatches give and that were sent back as
     * they stood say nothing new; weaker ones wait behind the measured ones, so that no measurement is lost by the way.
     *
     * @throws Refused where a measured figure is told that is not the swatch's: which is newer cannot be known
     */
    public SwatchHistory told(Map<Property, Figure> figures) {
        Map<Property, Figure> measured = measured();
        Map<Property, Figure> without = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            Optional<Figure> told = Optional.ofNullable(figures.get(property));
            Optional<Figure> swatch = Optional.ofNullable(measured.get(property));
            if (told.isPresent() && told.equals(swatch)) {
                told = Optional.ofNullable(before.get(property));
            } else if (told.isPresent() && swatch.isPresent() && told.get().basis() == Basis.MEASURED) {
                throw Refused.of(
                        "figures." + property.field(),
                        "stands as measured by a " + swatch.get().source(),
                        "tell a newer measurement as a swatch of the cloth, or remove that swatch first");
            }
            told.ifPresent(figure -> without.put(property, figure));
        }
        return new SwatchHistory(newestFirst, without);
    }
}
