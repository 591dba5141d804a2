package campcloth.rest;

import campcloth.cloth.ToldFigure;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.NotNull;
import org.jspecify.annotations.Nullable;

/** A figure with its interval, how it is known and where it comes from. */
@Schema(name = "Figure", description = "A value with its interval, how it is known and where it comes from")
record FigureBody(
        @NotNull Double value,

        @Schema(description = "lower end; the value itself where it is left out") @Nullable
        Double low,

        @Schema(description = "upper end; the value itself where it is left out") @Nullable
        Double high,

        @Schema(accessMode = Schema.AccessMode.READ_ONLY) @Nullable
        String unit,

        @NotNull Basis basis,

        @Schema(description = "id of a source, or words that say where the figure comes from") @Nullable
        String source) {

    static FigureBody of(Figure figure, String unit) {
        return new FigureBody(figure.value(), figure.low(), figure.high(), unit, figure.basis(), figure.source());
    }

    Figure figure() {
        return new Figure(
                value,
                low == null ? value : low,
                high == null ? value : high,
                basis,
                source == null ? ToldFigure.MAKER : source);
    }
}
