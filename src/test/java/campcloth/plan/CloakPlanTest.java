package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import campcloth.garment.Options;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cloaks laid out: every piece within the cloth, none over another. */
class CloakPlanTest {

    private static final Measurements WEARER = Measurements.of(Map.of("neckCm", 40.0, "lengthCm", 115.0));

    @ParameterizedTest
    @CsvSource({
        "140, 2, false, false, false",
        "140, 2, false, true, true",
        "60, 2, false, false, false",
        "60, 2, false, true, true",
        "60, 2, false, false, true",
        "140, 1, false, false, false",
        "150, 3, false, false, false",
        "140, 4, false, false, false",
        "140, 4, false, false, true",
        "60, 4, true, true, true",
        "90, 4, true, false, false"
    })
    void liesOnTheCloth(double widthCm, int quarters, boolean wedges, boolean middle, boolean nap) {
        Options options = Options.USUAL
                .with("quarters", quarters)
                .with("quarterWedges", wedges)
                .with("middleOnGrain", middle);
        CuttingPlan plan = plan(widthCm, options, nap, Fold.ANY);
        String which = quarters + " quarters on " + widthCm + " cm";
        PlacedPieces.assertHold(plan, which);
        if (nap) {
            assertThat(plan.placements()).as(which).noneMatch(PlacedPiece::turned);
        }
    }

    @Test
    void halfCircleInOnePieceTakesTwiceItsRadius() {
        CuttingPlan plan = plan(140, Options.USUAL, false, Fold.NONE);
        assertThat(plan.placements()).hasSize(1);
        double radius = (44 + 2 * Math.PI * 0.05) / Math.PI + 115;
        double hem = plan.hems().get(0).hem().allowanceCm();
        assertThat(plan.netLengthCm()).isCloseTo(2 * (radius + hem), within(0.3));
        assertThat(plan.ruleOfThumb()).startsWith("1 x 258");
    }

    @Test
    void handwovenClothIsPiecedOutOfItsWidth() {
        CuttingPlan plan = plan(60, Options.USUAL, false, Fold.NONE);
        assertThat(plan.placements()).hasSize(3);
        assertThat(plan.usableWidthCm()).isEqualTo(58);
        assertThat(plan.placements())
                .extracting(PlacedPiece::piece)
                .containsExactlyInAnyOrder("cloak panel 1", "cloak panel 2", "cloak panel 3");
    }

    @Test
    void fullCircleOnOneFoldIsCutThroughBothLayers() {
        CuttingPlan plan = plan(290, Options.USUAL.with("quarters", 4), false, Fold.ONE);
        assertThat(plan.placements()).hasSize(2);
        assertThat(plan.placements().get(0).mirrored())
                .isNotEqualTo(plan.placements().get(1).mirrored());
        PlacedPieces.assertHold(plan, "folded");
    }

    @Test
    void halfCircleHasNoFoldAlongTheCloth() {
        assertThatThrownBy(() -> plan(290, Options.USUAL, false, Fold.ONE))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("fold");
    }

    @Test
    void ribbonIsTooNarrowForTheNeck() {
        assertThatThrownBy(() -> plan(14, Options.USUAL, false, Fold.ANY))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("cloth.widthCm");
    }

    private static CuttingPlan plan(double widthCm, Options options, boolean nap, Fold fold) {
        ClothToCut cloth = Orders.washed(widthCm, 0, 0);
        CuttingOrder order = CuttingOrder.of(
                nap ? Orders.withNap(cloth) : cloth, new CuttingOrder.Line("cloak", 1, WEARER, options));
        return Orders.PLANNER.plan(Orders.withFold(order, fold));
    }
}
