package campcloth.cloth.swatch;

import java.util.List;

/**
 * Several readings of the same thing.
 *
 * @param mean their mean
 * @param standardError standard error of the mean, standard deviation over the root of how many; 0 where there is one only
 * @param count how many, from 1 on
 */
record Spread(double mean, double standardError, int count) {

    static Spread of(List<Double> readings) {
        int count = readings.size();
        double mean =
                readings.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double squares =
                readings.stream().mapToDouble(r -> (r - mean) * (r - mean)).sum();
        return new Spread(mean, count < 2 ? 0 : Math.sqrt(squares / (count - 1) / count), count);
    }

    /** Half the interval of 95 %: t times the standard error, but never less than what one cannot read. */
    double halfWidth(double readingError) {
        return count < 2 ? readingError : Math.max(readingError, StudentT.of95Percent(count - 1) * standardError);
    }
}
