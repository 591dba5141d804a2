package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import campcloth.garment.Options;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a plan refuses names the field at fault and what would help. */
class PlanRefusalsTest {

    /** The cloth of the worked example: 140 cm, 6 % along, 4 % across, 200 g/m2, 14.50 EUR a metre. */
    private static final ClothToCut CLOTH = Orders.priced(Orders.washed(140, 6, 4), 14.5);

    @Test
    void refusesNarrowClothWithWhatWouldHelp() {
        CuttingOrder narrow = CuttingOrder.of(Orders.washed(60, 0, 0), Orders.tunic(126));
        assertThatThrownBy(() -> Orders.PLANNER.plan(narrow)).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.refusals().get(0).field()).isEqualTo("cloth.widthCm");
            assertThat(refused.refusals().get(0).because())
                    .contains("front")
                    .contains("67.0")
                    .contains("58.0");
            assertThat(refused.refusals().get(0).remedy())
                    .contains("at least 69 cm")
                    .contains("centreSeams")
                    .contains("gores");
        });
        CuttingOrder.Line halves =
                new CuttingOrder.Line("tunic", 1, Orders.wearer(126, 95), Options.of(Map.of("centreSeams", true)));
        CuttingPlan plan = Orders.PLANNER.plan(CuttingOrder.of(Orders.washed(60, 0, 0), halves));
        assertThat(plan.placements()).hasSize(6);
        PlacedPieces.assertHold(plan, "centre seams on 60 cm");
    }

    @Test
    void goresAreNotAdvisedWhereTheDesignHasNone() {
        CuttingOrder trousers = CuttingOrder.of(
                Orders.washed(60, 0, 0),
                new CuttingOrder.Line("trousers", 1, Measurements.of(Map.of("hipCm", 110.0)), Options.USUAL));
        assertThatThrownBy(() -> Orders.PLANNER.plan(trousers))
                .hasMessageContaining("sideSeams")
                .message()
                .doesNotContain("gores");
    }

    @Test
    void widthNamedInTheRefusalIsEnoughAndAnyLessIsNot() {
        CuttingOrder narrow = CuttingOrder.of(Orders.washed(60, 5, 4), Orders.tunic(126));
        // (67 / 0.96) + 2 = 71.8
        assertThatThrownBy(() -> Orders.PLANNER.plan(narrow)).hasMessageContaining("at least 72 cm");
        assertThat(Orders.PLANNER
                        .plan(CuttingOrder.of(Orders.washed(72, 5, 4), Orders.tunic(126)))
                        .netLengthCm())
                .isGreaterThan(0);
        assertThatThrownBy(() -> Orders.PLANNER.plan(CuttingOrder.of(Orders.washed(71, 5, 4), Orders.tunic(126))))
                .isInstanceOf(Refused.class);
    }

    @Test
    void doesNotAdviseHalvesThatDoNotFitEither() {
        CuttingOrder strip = CuttingOrder.of(Orders.washed(40, 0, 0), Orders.tunic(126));
        assertThatThrownBy(() -> Orders.PLANNER.plan(strip))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused ->
                                assertThat(refused.refusals().get(0).remedy()).doesNotContain("centreSeams"));
    }

    @Test
    void refusesWithThePathOfTheGarmentAtFault() {
        CuttingOrder.Line wrong = new CuttingOrder.Line(
                "tunic", 1, Measurements.of(Map.of("finishedChestCm", 126.0, "lengthCm", 900.0)), Options.USUAL);
        assertRefused(CuttingOrder.of(CLOTH, Orders.tunic(110), wrong), "garments[1].wearer.lengthCm");
        CuttingOrder.Line unknown = new CuttingOrder.Line("crinoline", 1, Orders.wearer(126, 95), Options.USUAL);
        assertRefused(CuttingOrder.of(CLOTH, unknown), "garments[0].design");
        CuttingOrder.Line many = new CuttingOrder.Line("tunic", 51, Orders.wearer(126, 95), Options.USUAL);
        assertRefused(CuttingOrder.of(CLOTH, many), "garments");
        assertThatThrownBy(() -> Orders.washed(140, Double.NaN, 0)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> Orders.washed(140, 60, 0)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> Orders.washed(5, 0, 0)).isInstanceOf(Refused.class);
    }

    private static void assertRefused(CuttingOrder order, String field) {
        assertThatThrownBy(() -> Orders.PLANNER.plan(order))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).field()).isEqualTo(field));
    }
}
