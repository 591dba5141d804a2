package campcloth.rest;

import campcloth.cloth.DripTest;
import campcloth.cloth.LayerStack;
import campcloth.cloth.Swatch;
import campcloth.cloth.WashedMarks;
import campcloth.cloth.WeighedPieces;
import campcloth.figure.DayText;
import campcloth.figure.Refused;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A swatch as it is told: one or more of five measurements. */
@Schema(
        name = "Swatch",
        description = "What was measured on a piece cut from the cloth: one or more of weighed, washed, stack, wind,"
                + " drip. How to measure: GET /api/swatches/instructions")
record SwatchBody(
        @Schema(
                description = "day of the measurement, today where it is left out; the newest day's figure stands",
                format = "date",
                example = "2026-11-24")
        @Nullable
        String measuredOn,

        @Schema(description = "who measured, with what; goes into the source of the figures") @Nullable @Size(max = 500)
        String note,

        @Schema(
                description =
                        "whether the piece had lain in air of 20 degrees Celsius and 65 % humidity; no where it is left out")
        @Nullable
        Boolean conditioned,

        @Nullable @Valid WeighedBody weighed,
        @Nullable @Valid WashedMarksBody washed,
        @Nullable @Valid StackBody stack,
        @Nullable @Valid WindBody wind,
        @Nullable @Valid DripBody drip) {

    /** Pieces of known area, weighed one by one. */
    @Schema(name = "WeighedPieces", description = "Pieces of known area, weighed one by one before washing")
    record WeighedBody(
            @NotEmpty @Size(max = WeighedPieces.MOST_PIECES) List<@NotNull @Valid PieceBody> pieces,

            @Schema(description = "smallest step of the scale, g", example = "0.1") @NotNull
            Double scaleStepG,

            @Schema(description = "smallest step of the ruler, mm; 1 where it is left out", example = "1") @Nullable
            Double rulerStepMm) {

        WeighedPieces weighed() {
            return new WeighedPieces(each("pieces", pieces, PieceBody::piece), scaleStepG, ruler(rulerStepMm));
        }

        static WeighedBody of(WeighedPieces told) {
            return new WeighedBody(
                    told.pieces().stream()
                            .map(p -> new PieceBody(p.lengthCm(), p.widthCm(), null, p.massG()))
                            .toList(),
                    told.scaleStepG(),
                    told.rulerStepMm());
        }
    }

    /** One piece; its two sides or its area. */
    @Schema(name = "WeighedPiece", description = "A piece: lengthCm and widthCm, or areaCm2")
    record PieceBody(
            @Schema(example = "10") @Nullable Double lengthCm,
            @Schema(example = "10") @Nullable Double widthCm,

            @Schema(description = "instead of the sides") @Nullable
            Double areaCm2,

            @Schema(example = "1.9") @NotNull Double massG) {

        WeighedPieces.Piece piece() {
            if (areaCm2 != null && lengthCm == null && widthCm == null) {
                return WeighedPieces.Piece.ofArea(areaCm2, massG);
            }
            if (areaCm2 == null && lengthCm != null && widthCm != null) {
                return new WeighedPieces.Piece(lengthCm, widthCm, massG);
            }
            throw Refused.of(
                    areaCm2 != null ? "areaCm2" : lengthCm == null ? "lengthCm" : "widthCm",
                    areaCm2 != null ? "stands beside a side" : "is missing",
                    "give lengthCm and widthCm, or areaCm2 alone");
        }
    }

    /** Layers under a weight. */
    @Schema(name = "LayerStack", description = "Layers on a hard table under a flat weight")
    record StackBody(
            @Schema(description = "height of all layers", example = "4.2") @NotNull
            Double stackMm,

            @Schema(example = "10") @NotNull Integer layers,

            @Schema(description = "mass of the weight", example = "200") @NotNull
            Double massG,

            @Schema(description = "area on which the weight stands", example = "20") @NotNull
            Double areaCm2,

            @Schema(description = "smallest step of what the height was read with", example = "0.1") @NotNull
            Double readingStepMm) {

        LayerStack stack() {
            return new LayerStack(stackMm, layers, massG, areaCm2, readingStepMm);
        }

        static StackBody of(LayerStack told) {
            return new StackBody(told.stackMm(), told.layers(), told.massG(), told.areaCm2(), told.readingStepMm());
        }
    }

    /** Drops of water on the cloth. */
    @Schema(name = "DripTest", description = "Drops of clean water from 1 cm")
    record DripBody(
            @Schema(description = "s until each no longer shone; 60 where it still did after a minute")
            @NotEmpty
            @Size(max = DripTest.MOST_DROPS)
            List<@NotNull Double> seconds) {}

    /**
     * The swatch meant.
     *
     * @param today for a day that was left out; what is later than tomorrow is refused
     * @param reference finds the cloth of a wind test
     */
    Swatch swatch(LocalDate today, WindBody.Known reference) {
        return new Swatch(
                Swatch.day(DayText.day("measuredOn", Optional.ofNullable(measuredOn)), today),
                note == null ? "" : note,
                conditioned != null && conditioned,
                part("weighed", weighed, WeighedBody::weighed),
                part("washed", washed, WashedMarksBody::marks),
                part("stack", stack, StackBody::stack),
                part("wind", wind, body -> body.test(reference)),
                part("drip", drip, body -> new DripTest(body.seconds())));
    }

    static SwatchBody of(Swatch told) {
        return new SwatchBody(
                told.measuredOn().toString(),
                told.note(),
                told.conditioned(),
                told.weighed().map(WeighedBody::of).orElse(null),
                told.washed().map(WashedMarksBody::of).orElse(null),
                told.stack().map(StackBody::of).orElse(null),
                told.wind().map(WindBody::of).orElse(null),
                told.drip().map(drip -> new DripBody(drip.seconds())).orElse(null));
    }

    private static <B, T> Optional<T> part(String field, @Nullable B body, Function<B, T> meant) {
        return Optional.ofNullable(body).map(some -> Refused.within(field, () -> meant.apply(some)));
    }

    static <B, T> List<T> each(String field, List<B> bodies, Function<B, T> meant) {
        List<T> all = new ArrayList<>();
        for (int i = 0; i < bodies.size(); i++) {
            B body = bodies.get(i);
            all.add(Refused.within(field + "[" + i + "]", () -> meant.apply(body)));
        }
        return all;
    }

    static double ruler(@Nullable Double stepMm) {
        return stepMm == null ? WashedMarks.USUAL_RULER_STEP_MM : stepMm;
    }
}
