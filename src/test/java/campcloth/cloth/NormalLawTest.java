package campcloth.cloth;

import static campcloth.cloth.Samples.rows;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NormalLawTest {

    @Test
    void theNormalLawMatchesItsPublishedTable() {
        rows("/published/normal-law.csv", row -> {
            assertThat(1 - NormalLaw.upperTail(row.number("x"))).isCloseTo(row.number("p"), within(2e-10));
            assertThat(NormalLaw.upperTail(-row.number("x"))).isCloseTo(row.number("p"), within(2e-10));
        });
    }

    @Test
    void theTailMatchesItsIntegralFarOut() {
        for (double z = 0; z < 30; z += 0.37) {
            double integral = tailBySimpson(z);
            assertThat(NormalLaw.upperTail(z)).as("z %s", z).isCloseTo(integral, within(2e-8 * integral));
        }
    }

    @Test
    void theTailNeverRises() {
        double last = 1;
        for (double z = -40; z < 40; z += 0.001) {
            double tail = NormalLaw.upperTail(z);
            assertThat(tail).isBetween(0.0, last);
            last = tail;
        }
    }

    /** Q(z) as the integral of the density from z to z + 12, Simpson's rule. */
    private static double tailBySimpson(double z) {
        int steps = 60_000;
        double h = 12.0 / steps;
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double x = z + i * h;
            double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.exp(-x * x / 2);
        }
        return sum * h / 3 / Math.sqrt(2 * Math.PI);
    }
}
