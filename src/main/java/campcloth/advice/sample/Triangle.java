package campcloth.advice.sample;

import campcloth.figure.Figure;

/**
 * A figure taken as distributed over its interval with its value the likeliest and both ends the least likely: the triangular
 * distribution. Project choice: of most figures nothing is known but value and ends, and their ends are wide.
 */
public final class Triangle {

    private Triangle() {}

    /** What that share, 0 to 1, of all cases lies below; from low to high. */
    public static double quantile(Figure figure, double share) {
        double low = figure.low();
        double width = figure.high() - low;
        double below = figure.value() - low;
        double quantile = share * width < below
                ? low + Math.sqrt(share * width * below)
                : figure.high() - Math.sqrt((1 - share) * width * (width - below));
        return Math.max(low, Math.min(figure.high(), quantile));
    }
}
