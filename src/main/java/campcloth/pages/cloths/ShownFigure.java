package campcloth.pages.cloths;

import campcloth.cloth.Property;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Source;
import campcloth.figure.Sources;
import campcloth.pages.Units;
import java.util.Optional;

/**
 * A figure as it is shown.
 *
 * @param field which
 * @param value with its unit
 * @param interval both ends with their unit; empty for a figure without spread
 * @param basis how it is known
 * @param source where it comes from, in words
 * @param cited the source of the catalogue that these words name
 */
public record ShownFigure(
        String field, String value, String interval, Basis basis, String source, Optional<Source> cited) {

    public static ShownFigure of(Property property, Figure figure, Units units, Sources sources) {
        return of(property.field(), property.unit(), figure, units, sources);
    }

    /** How the ids of all sources of what is computed begin. */
    private static final String COMPUTED = "estimate-";

    static ShownFigure of(String field, String unit, Figure figure, Units units, Sources sources) {
        return new ShownFigure(
                field,
                Amounts.of(field, unit, figure, units),
                Amounts.interval(field, unit, figure, units),
                figure.basis(),
                figure.source(),
                sources.named(figure.source()));
    }

    public boolean isEstimated() {
        return basis == Basis.ESTIMATED;
    }

    /** Whether it was worked out for this page: what somebody wrote down as an estimate was not. */
    public boolean isComputed() {
        return isEstimated() && source.startsWith(COMPUTED);
    }
}
