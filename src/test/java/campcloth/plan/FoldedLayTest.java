package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import campcloth.garment.Options;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FoldedLayTest {

    @Test
    void pairsThroughBothLayersTakeNoMoreThanOpenCloth() {
        CuttingPlan plan = Orders.PLANNER.plan(CuttingOrder.of(Orders.washed(140, 0, 0), Orders.tunic(130)));
        assertThat(plan.lay()).isEqualTo(Fold.ONE);
        assertThat(plan.foldedLengthCm().orElseThrow()).isCloseTo(102 + 60, within(0.05));
        assertThat(plan.openLengthCm()).isCloseTo(102 + 60, within(0.05));
        assertThat(plan.notes()).anyMatch(note -> note.contains("easier to chalk"));
        PlacedPieces.assertHold(plan, "folded, 130 cm round");
    }

    @Test
    void openClothSavesWhereTheHalvesAreTooWideForTheFold() {
        CuttingOrder order = CuttingOrder.of(Orders.washed(140, 0, 0), Orders.tunic(140));
        CuttingPlan any = Orders.PLANNER.plan(order);
        assertThat(any.lay()).isEqualTo(Fold.NONE);
        assertThat(any.netLengthCm()).isCloseTo(204, within(0.05));
        CuttingPlan folded = Orders.PLANNER.plan(Orders.withFold(order, Fold.ONE));
        // both bodies along the fold, then the sleeves through both layers
        assertThat(folded.netLengthCm()).isCloseTo(204 + 60, within(0.05));
        assertThat(folded.lay()).isEqualTo(Fold.ONE);
        PlacedPieces.assertHold(folded, "folded, 140 cm round");
        assertThat(any.notes())
                .anyMatch(note -> note.contains("take 204.0 cm; folded once") && note.contains("264.0 cm"));
    }

    @Test
    void sleevesLieBesideTheFoldWhereThereIsRoom() {
        CuttingOrder order = CuttingOrder.of(Orders.washed(190, 0, 0), Orders.tunic(190));
        // 188 / 2 = 94 cm folded; a half body on the fold takes 49.5 cm, a sleeve 44 cm
        CuttingPlan folded = Orders.PLANNER.plan(Orders.withFold(order, Fold.ONE));
        assertThat(folded.netLengthCm()).isCloseTo(204, within(0.05));
        PlacedPieces.assertHold(folded, "folded, sleeves beside");
    }

    @Test
    void everyFoldedLayHoldsOnOpenCloth() {
        SplittableRandom random = new SplittableRandom(3);
        int folded = 0;
        for (int round = 0; round < 40; round++) {
            Options options = Options.of(Map.of(
                    "flareCm",
                    random.nextBoolean() ? 0 : random.nextDouble(1, 15),
                    "centreSeams",
                    random.nextBoolean()));
            CuttingOrder.Line line = new CuttingOrder.Line(
                    "tunic",
                    random.nextInt(1, 4),
                    Orders.wearer(random.nextDouble(80, 150), random.nextDouble(60, 120)),
                    options);
            ClothToCut cloth = Orders.washed(random.nextDouble(120, 200), 4, 2);
            CuttingOrder order = CuttingOrder.of(round % 2 == 0 ? cloth : Orders.withNap(cloth), line);
            try {
                CuttingPlan plan = Orders.PLANNER.plan(Orders.withFold(order, Fold.ONE));
                PlacedPieces.assertHold(plan, "round " + round + " of seed 3: " + order);
                assertThat(plan.placements())
                        .hasSize(Orders.PLANNER.plan(order).placements().size());
                folded++;
            } catch (Refused tooNarrow) {
                assertThat(tooNarrow.refusals().get(0).field()).isIn("fold", "cloth.widthCm");
            }
        }
        assertThat(folded).isGreaterThan(20);
    }

    @Test
    void twoFoldsTakeFrontAndBackSideBySide() {
        CuttingOrder order = CuttingOrder.of(Orders.washed(140, 0, 0), Orders.tunic(130));
        CuttingPlan plan = Orders.PLANNER.plan(Orders.withFold(order, Fold.TWO));
        assertThat(plan.lay()).isEqualTo(Fold.TWO);
        assertThat(plan.netLengthCm()).isCloseTo(102 + 60, within(1e-9));
        PlacedPieces.assertHold(plan, "two folds, 130 cm round");
        assertThatThrownBy(() -> Orders.PLANNER.plan(
                        Orders.withFold(CuttingOrder.of(Orders.washed(140, 0, 0), Orders.tunic(131)), Fold.TWO)))
                .isInstanceOf(Refused.class);
    }

    @Test
    void anyFoldIsNeverLongerThanOpenCloth() {
        for (int chest = 100; chest <= 150; chest += 10) {
            CuttingOrder order = CuttingOrder.of(Orders.washed(150, 3, 2), Orders.tunic(chest), Orders.tunic(110));
            CuttingPlan any = Orders.PLANNER.plan(order);
            assertThat(any.netLengthCm()).as("%d cm round", chest).isLessThanOrEqualTo(any.openLengthCm() + 0.05);
            PlacedPieces.assertHold(any, chest + " cm round");
            CuttingPlan open = Orders.PLANNER.plan(Orders.withFold(order, Fold.NONE));
            assertThat(open.netLengthCm()).as("%d cm round", chest).isEqualTo(any.openLengthCm());
        }
    }

    @Test
    void refusesToFoldWhatDoesNotLieOnTheHalf() {
        CuttingOrder order = CuttingOrder.of(Orders.washed(80, 0, 0), Orders.tunic(126));
        assertThat(Orders.PLANNER.plan(order).foldedLengthCm()).isEmpty();
        assertThatThrownBy(() -> Orders.PLANNER.plan(Orders.withFold(order, Fold.ONE)))
                .isInstanceOfSatisfying(
                        Refused.class,
                        refused -> assertThat(refused.refusals().get(0).field()).isEqualTo("fold"));
    }
}
