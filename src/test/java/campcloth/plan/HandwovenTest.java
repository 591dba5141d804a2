package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.garment.Options;
import org.junit.jupiter.api.Test;

/**
 * Handwoven cloth of 60 cm: (60 - 2) x 0.96 = 55.68 cm are left after the wash. A quarter of 126 cm with two allowances of 2 cm is
 * 35.5 cm, a sleeve 44 cm: one abreast each, four panels of 102 and two sleeves of 60 cm are 528 cm.
 */
class HandwovenTest {

    @Test
    void centreSeamsLayTheTunicOneBehindTheOther() {
        Options halves = Options.USUAL.with("centreSeams", true);
        CuttingPlan plan = Orders.PLANNER.plan(CuttingOrder.of(
                Orders.washed(60, 6, 4), new CuttingOrder.Line("tunic", 1, Orders.wearer(126, 95), halves)));
        assertThat(plan.netLengthCm()).isCloseTo(4 * 102 + 2 * 60, within(0.05));
        // 528 / 0.94 + 2 = 563.7
        assertThat(plan.buyLengthCm()).isEqualTo(570);
        assertThat(plan.ruleOfThumb()).startsWith("4 x 95 + 53 cm");
        assertThat(plan.seams()).anyMatch(seam -> seam.seam().name().equals("centre front and back"));
        PlacedPieces.assertHold(plan, "handwoven");
    }
}
