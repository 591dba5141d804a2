package campcloth.cloth;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Range;
import java.util.function.ToDoubleFunction;

/**
 * A number on its way to becoming an estimate: a middle with the ends of its interval, {@code low <= mid <= high}.
 *
 * <p>How intervals are carried through a formula: {@link #propagated} varies one input at a time between its ends, the others
 * at their middles, and adds the logarithms of the ratios in quadrature, upwards and downwards apart. That is the law of
 * propagation of uncertainty of JCGM 100:2008 (GUM), clause 5.1.2, for independent inputs, with finite steps instead of
 * derivatives (clause 5.1.3, note 2) and on a logarithmic scale, because textile quantities err by factors.
 * The interval found contains the middle, and never shrinks where an input's interval grows, as long as the formula is
 * monotone in each input.
 */
record Span(double low, double mid, double high) {

    Span {
        if (!(low <= mid && mid <= high)) {
            throw new IllegalArgumentException(low + " <= " + mid + " <= " + high + " does not hold");
        }
    }

    static Span exactly(double value) {
        return new Span(value, value, value);
    }

    /** A factor with the given error each way: value / error .. value * error. */
    static Span factor(double value, double error) {
        return new Span(value / error, value, value * error);
    }

    static Span of(Figure figure) {
        return new Span(figure.low(), figure.value(), figure.high());
    }

    /** The result of a formula that is positive wherever the inputs lie. */
    static Span propagated(ToDoubleFunction<double[]> formula, Span... inputs) {
        double[] middles = new double[inputs.length];
        for (int i = 0; i < inputs.length; i++) {
            middles[i] = inputs[i].mid;
        }
        double mid = formula.applyAsDouble(middles);
        double downSquared = 0;
        double upSquared = 0;
        for (int i = 0; i < inputs.length; i++) {
            double atLow = logRatio(formula, middles, i, inputs[i].low, mid);
            double atHigh = logRatio(formula, middles, i, inputs[i].high, mid);
            downSquared += square(Math.min(0, Math.min(atLow, atHigh)));
            upSquared += square(Math.max(0, Math.max(atLow, atHigh)));
        }
        return new Span(mid * Math.exp(-Math.sqrt(downSquared)), mid, mid * Math.exp(Math.sqrt(upSquared)));
    }

    /** Product of two independent positive spans, ends times ends. */
    Span times(Span other) {
        return new Span(low * other.low, mid * other.mid, high * other.high);
    }

    Span times(double factor) {
        return new Span(low * factor, mid * factor, high * factor);
    }

    Span plus(Span other) {
        return new Span(low + other.low, mid + other.mid, high + other.high);
    }

    /** The same middle with ends further off by a factor of at least 1; for positive spans. */
    Span widened(double factor) {
        return new Span(low / factor, mid, high * factor);
    }

    /** The same middle with ends at least a factor off; for positive spans. */
    Span atLeastAsWideAs(double factor) {
        return new Span(Math.min(low, mid / factor), mid, Math.max(high, mid * factor));
    }

    /** Each of the three numbers brought into the interval. */
    Span clampedTo(double least, double most) {
        return new Span(clamp(low, least, most), clamp(mid, least, most), clamp(high, least, most));
    }

    Span within(Range range) {
        return clampedTo(range.least(), range.most());
    }

    /** None of the three numbers above those of the other. */
    Span atMost(Span other) {
        return new Span(Math.min(low, other.low), Math.min(mid, other.mid), Math.min(high, other.high));
    }

    Figure asEstimate(Property property, String source) {
        Span plausible = within(property.range());
        return new Figure(plausible.mid, plausible.low, plausible.high, Basis.ESTIMATED, source);
    }

    private static double logRatio(
            ToDoubleFunction<double[]> formula, double[] middles, int varied, double value, double mid) {
        double[] inputs = middles.clone();
        inputs[varied] = value;
        return Math.log(formula.applyAsDouble(inputs) / mid);
    }

    private static double clamp(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }

    private static double square(double x) {
        return x * x;
    }
}
