package campcloth.pages.found;

import campcloth.cloth.Absorbency;
import campcloth.cloth.Cloth;
import campcloth.cloth.Estimates;
import campcloth.cloth.KeptSwatch;
import campcloth.cloth.LayerStack;
import campcloth.cloth.MarkedShrinkage;
import campcloth.cloth.Property;
import campcloth.cloth.SwatchFigures;
import campcloth.cloth.SwatchHistory;
import campcloth.figure.Sources;
import campcloth.figure.Words;
import campcloth.pages.Units;
import campcloth.pages.cloths.ShownFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What follows from a swatch, as the page shows it. */
public record SwatchResult(
        KeptSwatch kept,
        List<Change> changes,
        List<String> doubts,
        List<String> notes,
        List<Direction> directions,
        Optional<String> absorbency,
        Optional<String> windRatio,
        Optional<String> stackKPa) {

    /**
     * A figure that the swatch gives.
     *
     * @param before what was known or estimated without it
     * @param stands whether it is the cloth's figure now
     */
    public record Change(ShownFigure measured, Optional<ShownFigure> before, boolean stands) {}

    /**
     * The marks of one direction.
     *
     * @param way {@code warp} or {@code weft}
     * @param washes shrinkage after each wash in turn
     */
    public record Direction(String way, int pairs, List<String> washes, MarkedShrinkage.Course course) {}

    static SwatchResult of(KeptSwatch kept, SwatchHistory history, Cloth cloth, Units units, Sources sources) {
        SwatchFigures found = SwatchFigures.of(kept.swatch());
        Cloth before = Estimates.complete(cloth.with(history.olderThan(kept).figures()));
        List<Property> standing = history.standing(kept);
        List<Change> changes = new ArrayList<>();
        found.figures()
                .forEach((property, figure) -> changes.add(new Change(
                        ShownFigure.of(property, figure, units, sources),
                        before.figure(property).map(known -> ShownFigure.of(property, known, units, sources)),
                        standing.contains(property))));
        List<Direction> directions = new ArrayList<>();
        found.warp().map(marks -> direction("warp", marks)).ifPresent(directions::add);
        found.weft().map(marks -> direction("weft", marks)).ifPresent(directions::add);
        return new SwatchResult(
                kept,
                changes,
                history.doubts(kept),
                found.notes(),
                directions,
                found.absorbency().map(Absorbency::words),
                found.windRatio().map(ratio -> Words.fixed(ratio, 2)),
                kept.swatch().stack().map(LayerStack::pressureKPa).map(kPa -> Words.fixed(kPa, 2)));
    }

    private static Direction direction(String way, MarkedShrinkage marks) {
        return new Direction(
                way,
                marks.pairs(),
                marks.afterEachWashPercent().stream()
                        .map(percent -> Words.fixed(percent, 1) + " %")
                        .toList(),
                marks.course());
    }
}
