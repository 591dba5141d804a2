package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * On cloth 140 cm wide with selvedges of 1 cm, 138 cm are usable: two halves of 65 + 2 x 2 cm lie side by side, wider ones do
 * not. It is the layout that finds this out, with {@code Fold.NONE}; the rule of thumb only agrees (common practice, no
 * source: "once the length where the circumference is under about 130 cm").
 */
class SideBySideTest {

    private static final double BODY_CM = 95 + 2 + 5;
    private static final double SLEEVE_CM = 53 + 2 + 5;

    @Test
    void takesTheLengthOnceUpToACircumferenceOf130() {
        for (int chest = 120; chest <= 140; chest++) {
            CuttingPlan plan = open(140, chest);
            double expected = chest <= 130 ? BODY_CM + SLEEVE_CM : 2 * BODY_CM;
            assertThat(plan.netLengthCm()).as("circumference %d cm", chest).isCloseTo(expected, within(0.05));
            PlacedPieces.assertHold(plan, "circumference " + chest + " cm");
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {90, 110, 130, 139})
    void narrowerClothTakesTheLengthTwice(double widthCm) {
        assertThat(open(widthCm, 130).netLengthCm()).isGreaterThanOrEqualTo(2 * BODY_CM);
    }

    @Test
    void ruleOfThumbFlipsWhereTheLayoutDoes() {
        assertThat(open(140, 130).ruleOfThumbCm()).isEqualTo(150); // 95 + 53
        assertThat(open(140, 131).ruleOfThumbCm()).isEqualTo(250); // 2 x 95 + 53
        assertThat(open(140, 131).ruleOfThumb()).startsWith("2 x 95 + 53 cm");
    }

    @Test
    void shrinkageAcrossMovesTheFlip() {
        // 138 x 0.96 = 132.48 cm: two halves of 62.24 + 4 cm are the widest
        assertThat(washedAcross(124).netLengthCm()).isCloseTo(BODY_CM + SLEEVE_CM, within(0.05));
        CuttingPlan wider = washedAcross(126);
        assertThat(wider.netLengthCm()).isCloseTo(2 * BODY_CM, within(0.05));
        assertThat(wider.notes()).anyMatch(note -> note.contains("the wash takes so much of the width"));
    }

    @Test
    void layoutIsNoLongerThanTheRuleThatCountsAllowances() {
        for (int chest = 90; chest <= 180; chest += 9) {
            for (int width = 110; width <= 160; width += 10) {
                CuttingPlan plan = open(width, chest);
                double half = chest / 2.0 + 4;
                boolean sleevesAbreast = 2 * 44 <= width - 2;
                boolean sideBySide = 2 * half <= width - 2;
                double feasible = (sideBySide ? BODY_CM : 2 * BODY_CM) + (sleevesAbreast ? SLEEVE_CM : 2 * SLEEVE_CM);
                assertThat(plan.netLengthCm())
                        .as("circumference %d cm on %d cm", chest, width)
                        .isLessThanOrEqualTo(feasible + 0.05);
                PlacedPieces.assertHold(plan, "circumference " + chest + " cm on " + width + " cm");
            }
        }
    }

    private static CuttingPlan open(double widthCm, double chestCm) {
        return Orders.PLANNER.plan(
                Orders.withFold(CuttingOrder.of(Orders.washed(widthCm, 0, 0), Orders.tunic(chestCm)), Fold.NONE));
    }

    private static CuttingPlan washedAcross(double chestCm) {
        return Orders.PLANNER.plan(CuttingOrder.of(Orders.washed(140, 6, 4), Orders.tunic(chestCm)));
    }
}
