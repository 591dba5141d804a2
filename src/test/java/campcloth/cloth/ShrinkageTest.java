package campcloth.cloth;

import static campcloth.cloth.Samples.cloth;
import static campcloth.cloth.Samples.value;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.figure.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;

class ShrinkageTest {

    @Test
    void washedOrPreShrunkClothNeverShrinksMore() {
        for (String blend :
                List.of("cotton 100", "flax 100", "viscose 100", "wool 100", "flax 55; cotton 45", "silk 100")) {
            for (Weave weave : Weave.values()) {
                for (Finish treated : List.of(Finish.WASHED, Finish.PRESHRUNK, Finish.MERCERISED)) {
                    for (Property side : List.of(Property.SHRINK_WARP_PERCENT, Property.SHRINK_WEFT_PERCENT)) {
                        assertThat(value(cloth(blend, weave, treated), side))
                                .isLessThan(value(cloth(blend, weave, Finish.NONE), side));
                    }
                }
            }
        }
    }

    @Test
    void linenFromTheLoomShrinksMoreThanWashedLinenByWellMarkedIntervals() {
        assertThat(warp("flax 100", Finish.NONE).value()).isBetween(4.0, 10.0);
        assertThat(warp("flax 100", Finish.NONE).high()).isGreaterThanOrEqualTo(10);
        assertThat(warp("flax 100", Finish.WASHED).value()).isBetween(0.5, 3.0);
    }

    @Test
    void preShrunkWithoutAFigureMayStillShrinkByThreePercent() {
        assertThat(warp("cotton 100", Finish.PRESHRUNK).high()).isGreaterThanOrEqualTo(3);
    }

    @Test
    void fulledWoolShrinksLittleAndAlikeBothWays() {
        Cloth fulled = Estimates.complete(cloth("wool 100", Weave.PLAIN, Finish.FULLED));
        assertThat(fulled.required(Property.SHRINK_WARP_PERCENT).value()).isBetween(1.0, 3.0);
        assertThat(fulled.required(Property.SHRINK_WEFT_PERCENT).value()).isBetween(1.0, 3.0);
    }

    @Test
    void woolWashedByHandShrinksByHandWashFiguresEvenAsAKnit() {
        Cloth knit = Estimates.complete(cloth("wool 100", Weave.JERSEY, Finish.NONE));
        assertThat(knit.required(Property.SHRINK_WARP_PERCENT).value()).isBetween(3.0, 8.0);
        assertThat(knit.required(Property.SHRINK_WEFT_PERCENT).value()).isBetween(2.0, 6.0);
        assertThat(knit.required(Property.SHRINK_WARP_PERCENT).high()).isBetween(8.0, 9.0);
        assertThat(knit.required(Property.SHRINK_WEFT_PERCENT).high()).isBetween(6.0, 7.0);
    }

    @Test
    void everyWoolKnitOfTheCatalogueTellsItsShrinkageAndThatItIsForAWashByHand() {
        assertThat(ShippedCatalogue.get().cloths().values())
                .filteredOn(cloth ->
                        cloth.weave() == Weave.JERSEY && cloth.finish() != Finish.FULLED && BulkDensity.isHair(cloth))
                .hasSizeGreaterThanOrEqualTo(5)
                .allSatisfy(knit -> {
                    assertThat(knit.required(Property.SHRINK_WARP_PERCENT).high())
                            .isLessThanOrEqualTo(8);
                    assertThat(knit.required(Property.SHRINK_WEFT_PERCENT).high())
                            .isLessThanOrEqualTo(6);
                    assertThat(knit.note()).contains("by hand");
                });
    }

    @Test
    void aSyntheticShareHoldsTheClothMoreThanItsMassAlone() {
        assertThat(warp("polyester 65; cotton 35", Finish.NONE).value()).isBetween(1.0, 2.0);
        assertThat(warp("polyester 100", Finish.NONE).value()).isLessThan(1.5);
        assertThat(warp("polyester 34; cotton 66", Finish.NONE).value())
                .isGreaterThan(warp("polyester 35; cotton 65", Finish.NONE).value() * 1.2);
    }

    @Test
    void elastaneDrawsTheWeftInAndLeavesTheWarp() {
        Cloth stretch = Estimates.complete(cloth("cotton 97; elastane 3", Weave.TWILL, Finish.NONE));
        assertThat(stretch.required(Property.SHRINK_WEFT_PERCENT).value()).isBetween(3.0, 8.0);
        assertThat(stretch.required(Property.SHRINK_WARP_PERCENT).value())
                .isLessThanOrEqualTo(warp("cotton 100", Finish.NONE).value());
    }

    @Test
    void onlyAKnitOrAnUnnamedFibreMayGrowInWidth() {
        assertThat(Estimates.complete(cloth("cotton 100", Weave.JERSEY, Finish.NONE))
                        .required(Property.SHRINK_WEFT_PERCENT)
                        .low())
                .isNegative();
        assertThat(Estimates.complete(cloth("cotton 100", Weave.PLAIN, Finish.NONE))
                        .required(Property.SHRINK_WEFT_PERCENT)
                        .low())
                .isNotNegative();
    }

    @Test
    void cottonPlainWeaveShrinksAsTheTradeTablesSay() {
        Cloth cotton = Estimates.complete(cloth("cotton 100", Weave.PLAIN, Finish.NONE));
        assertThat(cotton.required(Property.SHRINK_WARP_PERCENT).value()).isBetween(3.0, 6.0);
        assertThat(cotton.required(Property.SHRINK_WEFT_PERCENT).value()).isBetween(1.0, 4.0);
    }

    private static Figure warp(String blend, Finish finish) {
        return Estimates.complete(cloth(blend, Weave.PLAIN, finish)).required(Property.SHRINK_WARP_PERCENT);
    }
}
