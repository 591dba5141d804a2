package campcloth.rest;

import campcloth.advice.Candidate;
import campcloth.advice.ClothsBesides;
import campcloth.advice.FireSideBySide;
import campcloth.cloth.Cloth;
import campcloth.cloth.ComparedFigure;
import campcloth.cloth.Contrast;
import campcloth.cloth.SideBySide;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.fire.FireGrade;
import campcloth.fire.FireHazard;
import campcloth.fire.MeltWarning;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The figures of several cloths side by side. Nothing is added up into one score. */
record SideBySideAnswer(
        @Schema(description = "in the order asked, those of the catalogue first")
        List<ClothColumn> cloths,

        @Schema(description = "one for each figure") List<Row> rows,

        @Schema(description = "at the fire asked about; null where none was") @Nullable
        FireRow fire,

        List<String> notes) {

    private static final String DIFFERS =
            "differs is CLEAR where the intervals of at least two of the cloths do not meet, WITHIN_ERROR where all meet,"
                    + " UNKNOWN where fewer than two of them have the figure.";

    private static final String NO_FIRE = "No fire was named, so none of these cloths was graded. Name it in fire.";

    /** One of the cloths. */
    @Schema(name = "ComparedClothColumn")
    record ClothColumn(
            @Schema(description = "id in the catalogue, or inline-1, inline-2 and so on")
            String id,

            String name,
            String composition,

            @Schema(description = "share that melts or must be presumed to, film or wax included")
            double meltablePercent,

            @Schema(
                    description =
                            "what it is clearly the best at, or at one end of; empty where the intervals do not tell or the"
                                    + " fire rules it out")
            List<String> bestAt) {}

    /** One figure of all the cloths. */
    @Schema(name = "ComparedRow")
    record Row(
            String property,
            String unit,

            @Schema(description = "in the order of the cloths")
            List<Cell> values,

            Contrast differs) {

        static Row of(ComparedFigure figure) {
            return new Row(
                    figure.quantity().field(),
                    figure.quantity().unit(),
                    figure.values().stream().map(Cell::of).toList(),
                    figure.contrast());
        }
    }

    /** A figure of one cloth; all null where it is neither known nor estimated. */
    @Schema(name = "ComparedCell")
    record Cell(
            @Nullable Double value,
            @Nullable Double low,
            @Nullable Double high,
            @Nullable Basis basis,
            @Nullable String source) {

        private static final Cell EMPTY = new Cell(null, null, null, null, null);

        static Cell of(Optional<Figure> figure) {
            return figure.map(f -> new Cell(
                            Rounded.to(f.value(), 3),
                            Rounded.to(f.low(), 3),
                            Rounded.to(f.high(), 3),
                            f.basis(),
                            f.source()))
                    .orElse(EMPTY);
        }
    }

    /** All the cloths at one fire. */
    @Schema(name = "ComparedFireRow", description = "All worn the same way at the same fire; it knows no rules")
    record FireRow(
            @Schema(description = "in the order of the cloths")
            List<FireCell> values,

            @Schema(description = "CLEAR where the grades differ")
            Contrast differs,

            List<String> cautions) {

        static FireRow of(FireSideBySide fire) {
            return new FireRow(fire.hazards().stream().map(FireCell::of).toList(), fire.contrast(), fire.cautions());
        }
    }

    /** One cloth at that fire. */
    @Schema(name = "ComparedFireCell")
    record FireCell(
            @Schema(description = "0 to 100; orders cloths, no physical measure")
            double hazard,

            FireGrade grade,
            @Schema(description = "the grade in words") String words,
            MeltWarning meltWarning,

            @Schema(description = "distance to keep from the fire's centre: an estimate for a steady fire")
            double standBackM,

            List<String> reasons) {

        static FireCell of(FireHazard hazard) {
            return new FireCell(
                    Rounded.to(hazard.hazard(), 2),
                    hazard.grade(),
                    hazard.grade().words(),
                    hazard.meltWarning(),
                    Rounded.to(hazard.standBack().roundedUpM(), 1),
                    hazard.reasons().stream().map(reason -> reason.sentence()).toList());
        }
    }

    static SideBySideAnswer of(List<Candidate> asked, SideBySideRequest request) {
        SideBySide compared = SideBySide.of(asked.stream().map(Candidate::cloth).toList());
        ClothsBesides besides = new ClothsBesides(
                compared, Optional.ofNullable(request.fire()).map(place -> place.of(compared.cloths())));
        List<ClothColumn> columns = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            columns.add(column(asked.get(i).id(), besides.cloths().get(i), besides.bestAt(i)));
        }
        return new SideBySideAnswer(
                columns,
                compared.figures().stream().map(Row::of).toList(),
                besides.fire().map(FireRow::of).orElse(null),
                notes(besides));
    }

    private static List<String> notes(ClothsBesides besides) {
        List<String> notes = new ArrayList<>();
        notes.add(DIFFERS);
        notes.addAll(ClothsBesides.NOTES);
        if (besides.fire().isEmpty()) {
            notes.add(NO_FIRE);
        }
        return notes;
    }

    private static ClothColumn column(String id, Cloth cloth, List<String> bestAt) {
        return new ClothColumn(
                id, cloth.name(), cloth.blend().words(), Rounded.to(FireSideBySide.meltablePercent(cloth), 2), bestAt);
    }
}
