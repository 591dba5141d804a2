package campcloth.pages.cloths;

import campcloth.cloth.Absorbency;
import campcloth.cloth.KeptSwatch;
import campcloth.cloth.Property;
import campcloth.cloth.SwatchFigures;
import campcloth.cloth.SwatchHistory;
import campcloth.figure.Sources;
import campcloth.pages.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A swatch as it is shown with its cloth.
 *
 * @param standing the figures that stand in the cloth now
 * @param past those that gave way to a newer swatch
 * @param absorbency how it takes a drop, in words; null where nobody tried
 * @param notes what to bear in mind, doubts first
 */
public record SwatchView(
        KeptSwatch kept,
        List<ShownFigure> standing,
        List<ShownFigure> past,
        @Nullable String absorbency,
        List<String> notes) {

    static List<SwatchView> all(SwatchHistory history, Units units, Sources sources) {
        return history.newestFirst().stream()
                .map(kept -> of(kept, history, units, sources))
                .toList();
    }

    private static SwatchView of(KeptSwatch kept, SwatchHistory history, Units units, Sources sources) {
        SwatchFigures found = SwatchFigures.of(kept.swatch());
        List<Property> stand = history.standing(kept);
        List<ShownFigure> standing = new ArrayList<>();
        List<ShownFigure> past = new ArrayList<>();
        found.figures()
                .forEach((property, figure) -> (stand.contains(property) ? standing : past)
                        .add(ShownFigure.of(property, figure, units, sources)));
        List<String> notes = new ArrayList<>(history.doubts(kept));
        notes.addAll(found.notes());
        return new SwatchView(
                kept,
                standing,
                past,
                Optional.ofNullable(found.absorbency().orElse(null))
                        .map(Absorbency::words)
                        .orElse(null),
                notes);
    }
}
