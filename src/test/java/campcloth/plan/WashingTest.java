package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a plan says of washing, by the cloth. Common practice, no source. */
class WashingTest {

    @Test
    void linenIsWashedTwiceAndNoHotterThanTheGarment() {
        assertThat(washing(cloth("flax", Weave.PLAIN, Finish.NONE, true)))
                .contains("wash it twice, each time as hot as the finished garment ever will be");
    }

    @Test
    void clothThatIsShrunkAlreadyIsWashedOnceToBeSure() {
        for (Finish finish : List.of(Finish.WASHED, Finish.PRESHRUNK)) {
            for (String fibre : List.of("flax", "cotton", "viscose")) {
                assertThat(washing(cloth(fibre, Weave.PLAIN, finish, true)))
                        .contains("shrunk it already, one wash to be sure")
                        .contains("wash and dry it once")
                        .doesNotContain("twice");
            }
        }
        assertThat(washing(cloth("wool", Weave.TWILL, Finish.PRESHRUNK, true)))
                .contains("one wash to be sure")
                .contains("lukewarm");
    }

    @Test
    void pileIsNeitherWashedHotNorPressed() {
        for (String fibre : List.of("cotton", "viscose", "silk", "polyester")) {
            assertThat(washing(cloth(fibre, Weave.PILE, Finish.NONE, true)))
                    .contains("never press the pile")
                    .doesNotContain("as hot")
                    .doesNotContain("press it");
        }
    }

    @Test
    void feltedClothIsNotNeatenedFirst() {
        assertThat(washing(cloth("wool", Weave.TWILL, Finish.FULLED, true))).doesNotContain("Neaten");
        CuttingPlan plan = plan(cloth("wool", Weave.TWILL, Finish.FULLED, true));
        assertThat(plan.notes()).anyMatch(n -> n.contains("nothing is neatened"));
        assertThat(plan.notes()).noneMatch(n -> n.contains("zigzag"));
    }

    @Test
    void waxedAndCoatedClothIsReckonedAsNeverWashed() {
        for (Finish finish : List.of(Finish.WAXED, Finish.COATED)) {
            for (boolean prewash : new boolean[] {true, false}) {
                CuttingPlan plan = plan(cloth("cotton", Weave.TIGHT_PLAIN, finish, prewash));
                assertThat(plan.usableWidthCm()).isEqualTo(138);
                // 2 x 102, and 2 to square the ends
                assertThat(plan.netLengthCm()).isCloseTo(204, within(0.05));
                assertThat(plan.buyLengthCm()).isEqualTo(210);
                assertThat(plan.buyLengthHighCm()).isEqualTo(210);
                assertThat(plan.hems()).allMatch(hem -> hem.hem().shrinkageCm() == 0);
                assertThat(plan.notes().stream()
                                .filter(n -> n.contains("wash") || n.contains("shrink"))
                                .filter(n -> !n.startsWith("The rule of thumb")))
                        .singleElement()
                        .asString()
                        .startsWith("Do not wash")
                        .contains("Nothing is reckoned for shrinkage");
                assertThat(plan.cautions()).noneMatch(c -> c.contains("washed"));
            }
        }
    }

    @Test
    void measuredShrinkageHoldsForTheWashesMeasured() {
        Figure warp = new Figure(5.4, 5.01, 5.79, Basis.MEASURED, "swatch of a day");
        ClothToCut measured = cloth("flax", Weave.PLAIN, Finish.NONE, true, warp);
        assertThat(plan(measured).notes())
                .filteredOn(n -> n.startsWith("The shrinkage was measured (swatch of a day)"))
                .singleElement()
                .asString()
                .contains("one more, can take more");
        assertThat(plan(cloth("flax", Weave.PLAIN, Finish.NONE, true)).notes())
                .noneMatch(n -> n.contains("was measured"));
    }

    private static String washing(ClothToCut cloth) {
        return plan(cloth).notes().get(0);
    }

    private static CuttingPlan plan(ClothToCut cloth) {
        return Orders.PLANNER.plan(CuttingOrder.of(cloth, Orders.tunic(135)));
    }

    private static ClothToCut cloth(String fibre, Weave weave, Finish finish, boolean prewash) {
        return cloth(fibre, weave, finish, prewash, new Figure(2.2, 0, 8, Basis.ESTIMATED, "test"));
    }

    private static ClothToCut cloth(String fibre, Weave weave, Finish finish, boolean prewash, Figure warp) {
        return new ClothToCut(
                "",
                140,
                1,
                warp,
                new Figure(1, 0, 4, Basis.ESTIMATED, "test"),
                250,
                Optional.empty(),
                Surface.PLAIN,
                Optional.of(weave),
                Optional.of(finish),
                Optional.of(fibre),
                false,
                false,
                prewash,
                Optional.empty());
    }
}
