package campcloth.advice;

/**
 * A declared utility: straight lines between stated points, flat beyond the first and the last. Scores run from 0 to 100.
 */
final class Curve {

    private final double[] values;
    private final double[] scores;

    private Curve(double[] values, double[] scores) {
        this.values = values;
        this.scores = scores;
    }

    /** Through the points given as value, score, value, score, with rising values. */
    static Curve through(double... points) {
        double[] values = new double[points.length / 2];
        double[] scores = new double[points.length / 2];
        for (int i = 0; i < values.length; i++) {
            values[i] = points[2 * i];
            scores[i] = points[2 * i + 1];
            if (i > 0 && values[i] <= values[i - 1] || scores[i] < 0 || scores[i] > 100) {
                throw new IllegalArgumentException("a curve needs rising values and scores from 0 to 100");
            }
        }
        return new Curve(values, scores);
    }

    /** The most points that the score changes by for a unit of the value. */
    double steepest() {
        double most = 0;
        for (int i = 1; i < values.length; i++) {
            most = Math.max(most, Math.abs((scores[i] - scores[i - 1]) / (values[i] - values[i - 1])));
        }
        return most;
    }

    double score(double value) {
        if (value <= values[0]) {
            return scores[0];
        }
        for (int i = 1; i < values.length; i++) {
            if (value <= values[i]) {
                double share = (value - values[i - 1]) / (values[i] - values[i - 1]);
                return scores[i - 1] + share * (scores[i] - scores[i - 1]);
            }
        }
        return scores[scores.length - 1];
    }
}
