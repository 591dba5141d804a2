package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** On 140 cm, 6 % along and 4 % across, a tunic 126 cm round and 95 cm long takes 204 cm washed, 217.03 cm unwashed. */
class RemnantAnswerTest {

    private static final CuttingOrder ORDER = CuttingOrder.of(Orders.washed(140, 6, 4), Orders.tunic(126));

    @Test
    void fitsFromTheLengthThatItTakesBeforeTheWash() {
        assertThat(answer(217.1).fits()).isTrue();
        assertThat(answer(217.0).fits()).isFalse();
    }

    @Test
    void saysHowMuchIsMissingAndThatNoLayoutDoes() {
        CuttingPlan.Remnant remnant = answer(200);
        assertThat(remnant.lengthCm()).isCloseTo(188, within(1e-9));
        assertThat(remnant.shortCm()).isCloseTo(16, within(0.05));
        assertThat(remnant.because()).contains("no layout can take less than 204.0 cm");
    }

    @Test
    void namesTheLeastShorteningThatHelps() {
        // 188 cm hold two bodies of 94 cm: 8 cm shorter, in steps 10
        assertThat(answer(200).wouldHelp()).contains("Make the body 10 cm shorter.");
    }

    @Test
    void everyHelpNamedFits() {
        CuttingOrder shorter = CuttingOrder.of(ORDER.cloth(), Orders.tunic(126, 85));
        assertThat(Orders.PLANNER
                        .plan(Orders.withRemnant(shorter, 200))
                        .remnant()
                        .orElseThrow()
                        .fits())
                .isTrue();
    }

    @Test
    void shortPieceHasNoHelp() {
        CuttingPlan.Remnant remnant = answer(40);
        assertThat(remnant.fits()).isFalse();
        assertThat(remnant.wouldHelp()).isEmpty();
    }

    private static CuttingPlan.Remnant answer(double lengthCm) {
        return Orders.PLANNER
                .plan(Orders.withRemnant(ORDER, lengthCm))
                .remnant()
                .orElseThrow();
    }
}
