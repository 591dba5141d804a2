package campcloth.pages.plan;

import campcloth.cloth.ComparedFigure;
import campcloth.figure.Figure;
import campcloth.figure.Words;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One figure of all the cloths compared, in metric units.
 *
 * @param key the quantity by its name
 * @param differs whether the cloths differ in it as far as the intervals tell
 */
public record FigureRow(String key, String unit, String differs, List<Cell> cells) {

    /** One cloth's figure; null where it is neither known nor estimated. */
    public record Cell(
            @Nullable Double value,
            @Nullable String written,
            @Nullable String interval,
            @Nullable String basis,
            @Nullable String source) {

        private static Cell of(Optional<Figure> figure) {
            return figure.map(f -> new Cell(
                            f.value(),
                            Words.number(rounded(f.value())),
                            interval(f),
                            f.basis().name(),
                            f.source()))
                    .orElse(new Cell(null, null, null, null, null));
        }

        private static @Nullable String interval(Figure figure) {
            return figure.low() == figure.high()
                    ? null
                    : Words.number(rounded(figure.low())) + " .. " + Words.number(rounded(figure.high()));
        }

        private static double rounded(double value) {
            double step = Math.abs(value) >= 100 ? 1 : Math.abs(value) >= 1 ? 0.1 : 0.001;
            return Math.round(value / step) * step;
        }
    }

    static FigureRow of(ComparedFigure figure) {
        return new FigureRow(
                figure.quantity().name(),
                figure.quantity().unit(),
                figure.contrast().name(),
                figure.values().stream().map(Cell::of).toList());
    }
}
