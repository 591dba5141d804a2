package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CurveTest {

    private final Curve curve = Curve.through(0, 100, 5, 50, 20, 0);

    @Test
    void passesThroughItsPointsAndRunsStraightBetweenThem() {
        assertThat(curve.score(0)).isEqualTo(100);
        assertThat(curve.score(2.5)).isCloseTo(75, within(1e-9));
        assertThat(curve.score(5)).isEqualTo(50);
        assertThat(curve.score(20)).isZero();
    }

    @Test
    void isFlatBeyondItsEnds() {
        assertThat(curve.score(-100)).isEqualTo(100);
        assertThat(curve.score(1e9)).isZero();
    }

    @Test
    void refusesPointsThatFallBackAndScoresOutsideTheScale() {
        assertThatThrownBy(() -> Curve.through(0, 100, 0, 50)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Curve.through(0, 101, 1, 50)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theWeightsOfAllCriteriaSumToOneWhateverTheEventAsks() {
        for (double cold : new double[] {0, 0.4, 1}) {
            for (boolean onSkin : new boolean[] {true, false}) {
                Demands demands = new Demands(cold, 1 - cold, onSkin, !onSkin);
                assertThat(Criteria.weights(demands).values().stream()
                                .mapToDouble(Double::doubleValue)
                                .sum())
                        .isCloseTo(1, within(1e-9));
            }
        }
    }
}
