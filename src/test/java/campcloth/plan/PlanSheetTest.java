package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.garment.Options;
import campcloth.layout.ClothEdge;
import campcloth.layout.CuttingSheet;
import campcloth.layout.LayoutDrawing;
import campcloth.layout.SheetPart;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A plan as it lies to be cut holds the same cloth as the plan on open cloth. */
class PlanSheetTest {

    private static CuttingPlan plan(double widthCm, Fold fold, CuttingOrder.Line... lines) {
        return Orders.PLANNER.plan(Orders.withFold(CuttingOrder.of(Orders.washed(widthCm, 6, 4), lines), fold));
    }

    private static double areaCm2(CuttingPlan plan) {
        return plan.usedPercent() / 100 * plan.usableWidthCm() * plan.netLengthCm();
    }

    private static double cutAreaCm2(CuttingSheet sheet) {
        return sheet.parts().stream()
                .mapToDouble(part -> part.outline().areaCm2() * (part.cut() == SheetPart.Cut.BOTH_LAYERS ? 2 : 1))
                .sum();
    }

    private static void assertOnTheCloth(CuttingSheet sheet) {
        for (SheetPart part : sheet.parts()) {
            double left = part.outline().leftCm();
            double right = left + part.outline().widthCm();
            switch (part.cut()) {
                case ONE_LAYER, BOTH_LAYERS -> {
                    assertThat(left).isGreaterThan(-1e-6);
                    assertThat(right).isLessThan(sheet.widthCm() + 1e-6);
                }
                case ON_LEFT_FOLD -> assertThat((left + right) / 2).isCloseTo(0, within(1e-6));
                case ON_RIGHT_FOLD -> assertThat((left + right) / 2).isCloseTo(sheet.widthCm(), within(1e-6));
            }
            assertThat(part.outline().lowCm() + part.outline().heightCm()).isLessThan(sheet.lengthCm() + 1e-6);
        }
    }

    @Test
    void openClothShowsEveryPieceOnce() {
        CuttingPlan plan = plan(140, Fold.NONE, Orders.tunic(126), Orders.tunic(110));
        CuttingSheet sheet = plan.sheet();
        assertThat(sheet.parts()).hasSameSizeAs(plan.placements());
        assertThat(sheet.isFolded()).isFalse();
        assertThat(sheet.widthCm()).isEqualTo(plan.usableWidthCm());
        assertThat(cutAreaCm2(sheet)).isCloseTo(areaCm2(plan), within(1e-3));
        assertOnTheCloth(sheet);
    }

    @Test
    void clothFoldedOnceHoldsPairsInBothLayersAndHalvesAlongTheFold() {
        Options flared = Options.of(Map.of("flareCm", 6));
        CuttingOrder.Line line = new CuttingOrder.Line("tunic", 3, Orders.wearer(110, 95), flared);
        for (double widthCm : new double[] {150, 170, 200}) {
            CuttingPlan plan = plan(widthCm, Fold.ONE, line);
            CuttingSheet sheet = plan.sheet();
            assertThat(sheet.right().kind()).isEqualTo(ClothEdge.Kind.FOLD);
            assertThat(sheet.left()).isEqualTo(ClothEdge.BOTH_SELVEDGES);
            assertThat(sheet.widthCm()).isCloseTo(plan.usableWidthCm() / 2, within(1e-9));
            assertThat(sheet.parts()).noneMatch(part -> part.cut() == SheetPart.Cut.ONE_LAYER);
            assertThat(cutAreaCm2(sheet)).as("%s cm", widthCm).isCloseTo(areaCm2(plan), within(1e-3));
            assertOnTheCloth(sheet);
        }
    }

    @Test
    void twoFoldsHoldHalvesAlongEither() {
        CuttingPlan plan = plan(150, Fold.TWO, Orders.tunic(110));
        CuttingSheet sheet = plan.sheet();
        assertThat(sheet.left().isFold() && sheet.right().isFold()).isTrue();
        assertThat(sheet.left().flapCm() + sheet.widthCm() + sheet.right().flapCm())
                .isCloseTo(plan.usableWidthCm(), within(1e-9));
        assertThat(sheet.left().flapCm() + sheet.right().flapCm()).isLessThan(sheet.widthCm() + 1e-6);
        assertThat(sheet.parts()).allMatch(part -> part.cut().isOnFold());
        assertThat(cutAreaCm2(sheet)).isCloseTo(areaCm2(plan), within(1e-3));
        assertOnTheCloth(sheet);
        assertThat(LayoutDrawing.svg(sheet)).contains("both selvedges folded inwards", "left-edge-fold");
    }

    @Test
    void theTitleTellsClothLengthAndWash() {
        CuttingPlan plan = plan(140, Fold.NONE, Orders.tunic(126));
        assertThat(plan.sheet().facts())
                .anyMatch(fact -> fact.contains("140 cm wide as bought") && fact.contains("Length to buy 220 cm"))
                .anyMatch(fact -> fact.contains("after the wash"));
        ClothToCut unwashed = ClothToCut.plain(140, 6, 4, 200, false);
        CuttingPlan large = Orders.PLANNER.plan(CuttingOrder.of(Orders.withNap(unwashed), Orders.tunic(110)));
        assertThat(large.sheet().facts()).anyMatch(fact -> fact.contains("unwashed"));
        assertThat(large.sheet().oneWay()).isTrue();
        assertThat(plan.sheet().oneWay()).isFalse();
    }

    @Test
    void pagesAndPictureAreDrawnAlikeFromTheSamePlan() {
        CuttingSheet sheet = plan(60, Fold.NONE, halves()).sheet();
        List<String> pages = LayoutDrawing.a4Pages(sheet);
        assertThat(pages.size()).isGreaterThan(1);
        assertThat(pages.get(0)).contains("Page 1 of " + pages.size());
        assertThat(LayoutDrawing.a4Pages(sheet)).isEqualTo(pages);
    }

    private static CuttingOrder.Line halves() {
        return new CuttingOrder.Line("tunic", 1, Orders.wearer(126, 95), Options.of(Map.of("centreSeams", true)));
    }
}
