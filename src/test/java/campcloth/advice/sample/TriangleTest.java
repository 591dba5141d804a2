package campcloth.advice.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TriangleTest {

    private static final long SEED = 20_26;

    @Test
    void itGoesFromLowToHighAndNeverFalls() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 20_000; i++) {
            Figure figure = drawn(random);
            double one = random.nextDouble();
            double other = random.nextDouble();
            assertThat(Triangle.quantile(figure, 0)).isCloseTo(figure.low(), within(1e-12));
            assertThat(Triangle.quantile(figure, 1)).isCloseTo(figure.high(), within(1e-12));
            assertThat(Triangle.quantile(figure, Math.min(one, other)))
                    .as("seed %d, %s at %s and %s", SEED, figure, one, other)
                    .isLessThanOrEqualTo(Triangle.quantile(figure, Math.max(one, other)) + 1e-12);
        }
    }

    /** Mean (low + value + high)/3 and variance of the triangular distribution, by the midpoint rule. */
    @Test
    void meanAndVarianceAreThoseOfATriangle() {
        Figure figure = new Figure(2, 1, 7, Basis.TYPICAL, "drawn");
        int steps = 200_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < steps; i++) {
            double x = Triangle.quantile(figure, (i + 0.5) / steps);
            sum += x;
            squares += x * x;
        }
        double mean = sum / steps;
        assertThat(mean).isCloseTo(10.0 / 3, within(1e-5));
        assertThat(squares / steps - mean * mean).isCloseTo((1 + 4 + 49 - 2 - 7 - 14) / 18.0, within(1e-4));
    }

    @Test
    void aFigureWithoutSpreadStaysWhatItIs() {
        Figure exact = Figure.exact(190, Basis.MEASURED, "drawn");
        for (double share = 0; share <= 1; share += 0.01) {
            assertThat(Triangle.quantile(exact, share)).isEqualTo(190);
        }
    }

    private static Figure drawn(SplittableRandom random) {
        double low = random.nextDouble(0.1, 5);
        double value = random.nextInt(4) == 0 ? low : random.nextDouble(low, 10);
        double high = random.nextInt(4) == 0 ? value : random.nextDouble(value, 20) + 0.001;
        return new Figure(value, low, high, Basis.TYPICAL, "drawn");
    }
}
