package campcloth.cloth.swatch;

import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import campcloth.figure.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** A measured figure: its interval cut to what such a figure can be at all, its source in words. */
final class MeasuredFigure {

    private static final int MACHINE_DECIMALS = 9;
    private static final int DECIMALS = 3;

    private MeasuredFigure() {}

    static Figure of(Property property, Spread spread, double readingError, Swatch swatch, String how) {
        double half = spread.halfWidth(readingError);
        return of(property, spread.mean(), spread.mean() - half, spread.mean() + half, swatch, how);
    }

    static Figure of(Property property, double value, double low, double high, Swatch swatch, String how) {
        Range range = property.range();
        range.check(value);
        return new Figure(
                rounded(value, RoundingMode.HALF_UP),
                rounded(Math.min(value, Math.max(range.least(), low)), RoundingMode.FLOOR),
                rounded(Math.max(value, Math.min(range.most(), high)), RoundingMode.CEILING),
                Basis.MEASURED,
                source(swatch, how));
    }

    /** To three decimals, the interval outwards; digits that only the machine's arithmetic makes are cut before. */
    private static double rounded(double value, RoundingMode outwards) {
        return BigDecimal.valueOf(value)
                .setScale(MACHINE_DECIMALS, RoundingMode.HALF_UP)
                .setScale(DECIMALS, outwards)
                .doubleValue();
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
