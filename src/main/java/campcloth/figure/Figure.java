package campcloth.figure;

/**
 * A value with the interval it lies in, how it is known and where it comes from. The unit is in the name of whatever holds
 * the figure ({@code weightGsm}, {@code thicknessMm}).
 *
 * @param value best single value
 * @param low lower end of the interval, at most {@code value}
 * @param high upper end of the interval, at least {@code value}
 * @param basis how it is known
 * @param source id of the source in {@code catalogue/sources.csv}, or words that say where it comes from
 */
public record Figure(double value, double low, double high, Basis basis, String source) {

    public Figure {
        if (!Double.isFinite(value) || !Double.isFinite(low) || !Double.isFinite(high)) {
            throw Refused.of("value", "a figure must be a finite number", "give a number such as 190");
        }
        if (low > value || high < value) {
            throw Refused.of(
                    "low",
                    "the interval " + low + ".." + high + " does not contain the value " + value,
                    "give low <= value <= high");
        }
        if (source.isBlank()) {
            throw Refused.of("source", "a figure needs a source", "name the source of the figure");
        }
    }

    /** A figure without spread. */
    public static Figure exact(double value, Basis basis, String source) {
        return new Figure(value, value, value, basis, source);
    }

    /** This figure known only as an estimate, from the given source. */
    public Figure asEstimate(String estimateSource) {
        return new Figure(value, low, high, Basis.ESTIMATED, estimateSource);
    }
}
