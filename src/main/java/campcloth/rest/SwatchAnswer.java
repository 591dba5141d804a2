package campcloth.rest;

import campcloth.cloth.Absorbency;
import campcloth.cloth.KeptSwatch;
import campcloth.cloth.LayerStack;
import campcloth.cloth.MarkedShrinkage;
import campcloth.cloth.MarkedShrinkage.Course;
import campcloth.cloth.Property;
import campcloth.cloth.SwatchFigures;
import campcloth.cloth.SwatchHistory;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A swatch that is kept, and what follows from it. */
@Schema(name = "SwatchAnswer", description = "A swatch that is kept, and what follows from it")
record SwatchAnswer(
        String id,
        String clothId,
        String madeAt,

        @Schema(description = "what was measured, as it was told")
        SwatchBody swatch,

        @Schema(description = "measured figures by field name, each with its interval")
        Map<String, FigureBody> figures,

        @Schema(description = "which of them stand in the cloth now; the others gave way to a newer swatch")
        List<String> standing,

        @Nullable ShrinkageBody warp,
        @Nullable ShrinkageBody weft,

        @Schema(description = "pressure under the weight on the layers") @Nullable
        Double stackPressureKPa,

        @Schema(description = "air permeability over that of the cloth beside it") @Nullable
        Double windRatio,

        @Schema(description = "how it takes a drop; an observation") @Nullable
        Absorbency absorbency,

        @Nullable String absorbencySays,

        @Schema(description = "what to bear in mind; first, where a figure lies far from what was known before")
        List<String> notes) {

    /** What the marks of one direction say. */
    @Schema(name = "MarkedShrinkage", description = "What the marks of one direction say; the mean over the pairs")
    record ShrinkageBody(
            int pairs,
            List<WashBody> washes,

            @Schema(description = "standard error of the mean after the last wash; 0 for a single pair")
            double standardErrorPercent,

            @Schema(description = "what two readings can be off by; the interval is never narrower")
            double readingErrorPercent,

            @Schema(description = "whether the last wash still moved the marks")
            Course course) {

        static ShrinkageBody of(MarkedShrinkage marks) {
            return new ShrinkageBody(
                    marks.pairs(),
                    IntStream.range(0, marks.washes())
                            .mapToObj(i -> WashBody.of(
                                    i + 1, marks.afterEachWashPercent().get(i)))
                            .toList(),
                    Rounded.to(marks.standardErrorPercent(), 3),
                    Rounded.to(marks.readingErrorPercent(), 3),
                    marks.course());
        }
    }

    /** After one wash. */
    @Schema(name = "WashTotal", description = "The total up to and with this wash")
    record WashBody(
            int wash,

            @Schema(description = "positive where it became shorter, as shrinkWarpPercent")
            double shrinkagePercent,

            @Schema(description = "the same after ISO 5077: negative where it became shorter")
            double dimensionalChangePercent) {

        static WashBody of(int wash, double percent) {
            double rounded = Rounded.to(percent, 2);
            return new WashBody(wash, rounded, 0 - rounded);
        }
    }

    static SwatchAnswer of(KeptSwatch kept, SwatchHistory history) {
        SwatchFigures found = SwatchFigures.of(kept.swatch());
        Map<String, FigureBody> figures = new LinkedHashMap<>();
        found.figures()
                .forEach((property, figure) -> figures.put(property.field(), FigureBody.of(figure, property.unit())));
        return new SwatchAnswer(
                kept.id(),
                kept.clothId(),
                kept.madeAt().toString(),
                SwatchBody.of(kept.swatch()),
                figures,
                history.standing(kept).stream().map(Property::field).toList(),
                found.warp().map(ShrinkageBody::of).orElse(null),
                found.weft().map(ShrinkageBody::of).orElse(null),
                kept.swatch()
                        .stack()
                        .map(LayerStack::pressureKPa)
                        .map(kPa -> Rounded.to(kPa, 3))
                        .orElse(null),
                found.windRatio().map(ratio -> Rounded.to(ratio, 3)).orElse(null),
                found.absorbency().orElse(null),
                found.absorbency().map(Absorbency::words).orElse(null),
                Stream.concat(history.doubts(kept).stream(), found.notes().stream())
                        .toList());
    }
}
