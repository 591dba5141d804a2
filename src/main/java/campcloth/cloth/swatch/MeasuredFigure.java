package campcloth.cloth.swatch;

import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import campcloth.figure.Words;

/** A measured figure: its interval cut to what such a figure can be at all, its source in words. */
final class MeasuredFigure {

    private MeasuredFigure() {}

    static Figure of(Property property, Spread spread, double readingError, Swatch swatch, String how) {
        double half = spread.halfWidth(readingError);
        return of(property, spread.mean(), spread.mean() - half, spread.mean() + half, swatch, how);
    }

    static Figure of(Property property, double value, double low, double high, Swatch swatch, String how) {
        Range range = property.range();
        return new Figure(
                range.check(value),
                Math.min(value, Math.max(range.least(), low)),
                Math.max(value, Math.min(range.most(), high)),
                Basis.MEASURED,
                source(swatch, how));
    }

    /** As "swatch of 2026-11-24, 3 pairs of marks: note", in one line without characters that steer the output. */
    private static String source(Swatch swatch, String how) {
        String note = swatch.note()
                .replaceAll("\\p{Cf}", "")
                .replaceAll("[\\p{Cntrl}\\p{Z}]+", " ")
                .strip();
        return "swatch of " + swatch.measuredOn() + ", " + how + (note.isEmpty() ? "" : ": " + Words.shortened(note));
    }

    /** As "1 piece", "3 pieces". */
    static String counted(int count, String one, String several) {
        return count + " " + (count == 1 ? one : several);
    }
}
