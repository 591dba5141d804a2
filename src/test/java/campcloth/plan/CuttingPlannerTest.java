package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Surface;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.garment.Hem;
import campcloth.garment.Options;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CuttingPlannerTest {

    /** The cloth of the worked example: 140 cm, 6 % along, 4 % across, 200 g/m2, 14.50 EUR a metre. */
    private static final ClothToCut CLOTH = Orders.priced(Orders.washed(140, 6, 4), 14.5);

    private static final CuttingOrder ORDER = CuttingOrder.of(CLOTH, Orders.tunic(126));

    @Test
    void buysTheWashedLengthWithTheShrinkageAndRoundsUp() {
        CuttingPlan plan = Orders.PLANNER.plan(ORDER);
        assertThat(plan.usableWidthCm()).isCloseTo(138 * 0.96, within(1e-9));
        assertThat(plan.netLengthCm()).isCloseTo(204, within(0.05));
        // 204 / 0.94 = 217.02, and 2 to square the ends
        assertThat(plan.buyLengthCm()).isEqualTo(220);
        assertThat(plan.cost()).contains(new Money(31.9, "EUR"));
        assertThat(plan.seamAllowanceCm()).isEqualTo(2);
        assertThat(plan.needleNm()).isBetween(80, 90);
        assertThat(plan.stitchLengthMm()).isEqualTo(2.5);
        assertThat(plan.placements()).hasSize(4);
        assertThat(plan.fitsRemnant()).isEmpty();
        PlacedPieces.assertHold(plan, "worked example");
    }

    @Test
    void roundsUpToTheStepOfTheShop() {
        CuttingOrder fine = new CuttingOrder(CLOTH, ORDER.garments(), Optional.empty(), Fold.ANY, 5);
        assertThat(Orders.PLANNER.plan(fine).buyLengthCm()).isEqualTo(220);
        CuttingOrder exact = new CuttingOrder(CLOTH, ORDER.garments(), Optional.empty(), Fold.ANY, 1);
        assertThat(Orders.PLANNER.plan(exact).buyLengthCm()).isEqualTo(220);
        CuttingOrder millimetres = new CuttingOrder(CLOTH, ORDER.garments(), Optional.empty(), Fold.ANY, 0.1);
        assertThat(Orders.PLANNER.plan(millimetres).buyLengthCm()).isCloseTo(219.1, within(1e-9));
        // 2 x 104 + 2: a length that is a whole number of steps is not rounded to the next
        CuttingOrder whole = CuttingOrder.of(Orders.washed(140, 0, 0), Orders.tunic(140, 97));
        assertThat(Orders.PLANNER.plan(whole).buyLengthCm()).isEqualTo(210);
    }

    @Test
    void buyIsNetOverWhatTheWashLeavesForAnyShrinkage() {
        SplittableRandom random = new SplittableRandom(11);
        for (int round = 0; round < 40; round++) {
            double warp = random.nextDouble(0, 20);
            double weft = random.nextDouble(0, 8);
            CuttingOrder order = CuttingOrder.of(
                    Orders.priced(Orders.washed(random.nextInt(110, 160), warp, weft), 9.95),
                    Orders.tunic(random.nextInt(90, 160), random.nextInt(60, 140)));
            CuttingPlan plan = Orders.PLANNER.plan(order);
            double exact = plan.netLengthCm() / (1 - warp / 100);
            String which = "round " + round + " of seed 11: " + order;
            assertThat(plan.buyLengthCm()).as(which).isBetween(exact + 2 - 1e-5, exact + 12);
            assertThat(plan.buyLengthCm() / 10).as(which).isCloseTo(Math.rint(plan.buyLengthCm() / 10), within(1e-9));
            assertThat(plan.cost().orElseThrow().amount())
                    .as(which)
                    .isCloseTo(plan.buyLengthCm() / 100 * 9.95, within(0.005 + 1e-9));
            PlacedPieces.assertHold(plan, which);
        }
    }

    @Test
    void moreShrinkageNeverBuysLess() {
        for (int chest : new int[] {100, 118, 126, 140}) {
            double before = 0;
            for (int percent = 0; percent <= 12; percent++) {
                double buy = Orders.PLANNER
                        .plan(CuttingOrder.of(Orders.washed(140, percent, percent), Orders.tunic(chest)))
                        .buyLengthCm();
                assertThat(buy).as("%d cm round, %d %%", chest, percent).isGreaterThanOrEqualTo(before);
                before = buy;
            }
        }
    }

    @Test
    void longerGarmentNeverNeedsLess() {
        double boundBefore = 0;
        double netBefore = 0;
        for (int length = 60; length <= 150; length += 6) {
            CuttingPlan plan = Orders.PLANNER.plan(CuttingOrder.of(CLOTH, Orders.tunic(126, length)));
            assertThat(plan.lowerBoundCm()).as("%d cm long", length).isGreaterThanOrEqualTo(boundBefore);
            assertThat(plan.netLengthCm()).as("%d cm long", length).isGreaterThanOrEqualTo(netBefore - 0.05);
            boundBefore = plan.lowerBoundCm();
            netBefore = plan.netLengthCm();
        }
    }

    @Test
    void widerClothNeverTakesMoreLength() {
        for (double flare : new double[] {0, 7}) {
            CuttingOrder.Line line =
                    new CuttingOrder.Line("tunic", 1, Orders.wearer(126, 95), Options.USUAL.with("flareCm", flare));
            double before = Double.POSITIVE_INFINITY;
            for (int width = 90; width <= 220; width += 5) {
                double net = Orders.PLANNER
                        .plan(CuttingOrder.of(Orders.washed(width, 6, 4), line))
                        .netLengthCm();
                assertThat(net).as("flare %s on %d cm", flare, width).isLessThanOrEqualTo(before + 0.05);
                before = net;
            }
        }
    }

    @Test
    void napNeverSavesCloth() {
        Options flared = Options.USUAL.with("flareCm", 12);
        CuttingOrder.Line line = new CuttingOrder.Line("tunic", 2, Orders.wearer(120, 95), flared);
        CuttingPlan plain = Orders.PLANNER.plan(CuttingOrder.of(CLOTH, line));
        CuttingPlan napped = Orders.PLANNER.plan(CuttingOrder.of(Orders.withNap(CLOTH), line));
        assertThat(napped.netLengthCm()).isGreaterThanOrEqualTo(plain.netLengthCm() - 0.05);
        assertThat(napped.placements()).noneMatch(PlacedPiece::turned);
        assertThat(napped.notes()).anyMatch(note -> note.contains("nap"));
        PlacedPieces.assertHold(napped, "napped");
        PlacedPieces.assertHold(plain, "plain");
    }

    @Test
    void unwashedClothIsCutLargerAndSaysSo() {
        CuttingOrder order = CuttingOrder.of(ClothToCut.plain(140, 6, 4, 200, false), Orders.tunic(126));
        CuttingPlan plan = Orders.PLANNER.plan(order);
        assertThat(plan.usableWidthCm()).isEqualTo(138);
        PlacedPiece front = plan.placements().stream()
                .filter(p -> p.piece().equals("front"))
                .findFirst()
                .orElseThrow();
        double width =
                front.outlineCm().stream().mapToDouble(p -> p.xCm()).max().orElseThrow() - front.xCm();
        double height =
                front.outlineCm().stream().mapToDouble(p -> p.yCm()).max().orElseThrow() - front.yCm();
        assertThat(width).isCloseTo(63 / 0.96 + 4, within(1e-6));
        assertThat(height).isCloseTo(95 / 0.94 + 7, within(1e-6));
        Hem hem = plan.hems().get(0).hem();
        assertThat(hem.shrinkageCm()).isCloseTo(95 / 0.94 - 95, within(1e-6));
        assertThat(plan.buyLengthCm()).isGreaterThanOrEqualTo(plan.netLengthCm());
        assertThat(plan.notes()).anyMatch(note -> note.contains("Cut without washing first"));
    }

    @Test
    void namesWhatTheWorstShrinkageWouldNeed() {
        ClothToCut certain = Orders.washed(140, 6, 2);
        ClothToCut uncertain = new ClothToCut(
                "linen",
                140,
                1,
                figure(6, 4, 10),
                figure(2, 1, 3),
                200,
                Optional.empty(),
                Surface.PLAIN,
                Optional.empty(),
                Optional.empty(),
                Optional.of("flax"),
                false,
                false,
                true,
                Optional.empty());
        CuttingPlan plan = Orders.PLANNER.plan(CuttingOrder.of(uncertain, Orders.tunic(135)));
        assertThat(plan.buyLengthCm())
                .isEqualTo(Orders.PLANNER
                        .plan(CuttingOrder.of(certain, Orders.tunic(135)))
                        .buyLengthCm());
        // 204 / 0.90 + 2 = 228.7
        assertThat(plan.buyLengthHighCm()).isEqualTo(230);
        assertThat(plan.notes()).anyMatch(note -> note.contains("10 % along") && note.contains("230 cm"));
        assertThat(plan.notes()).anyMatch(note -> note.contains("wash it twice, each time as hot"));
    }

    @Test
    void groupOfThreeIsLaidTogether() {
        CuttingOrder group = CuttingOrder.of(CLOTH, Orders.tunic(110), Orders.tunic(126, 100), Orders.tunic(90, 70));
        CuttingPlan plan = Orders.PLANNER.plan(group);
        double alone = group.garments().stream()
                .mapToDouble(line ->
                        Orders.PLANNER.plan(CuttingOrder.of(CLOTH, line)).netLengthCm())
                .sum();
        assertThat(plan.netLengthCm()).isLessThanOrEqualTo(alone + 0.05);
        assertThat(plan.placements()).hasSize(12);
        assertThat(plan.placements()).extracting(PlacedPiece::piece).contains("tunic 1 front", "tunic 3 sleeve");
        assertThat(plan.hems()).extracting(CuttingPlan.GarmentHem::garment).contains("tunic 2");
        assertThat(plan.threadM())
                .isGreaterThan(2
                        * Orders.PLANNER
                                .plan(CuttingOrder.of(CLOTH, Orders.tunic(90, 70)))
                                .threadM());
        PlacedPieces.assertHold(plan, "group of three");
    }

    @Test
    void severalAlikeAreCopiesOfOnePiece() {
        CuttingOrder.Line three = new CuttingOrder.Line("tunic", 3, Orders.wearer(110, 95), Options.USUAL);
        CuttingPlan plan = Orders.PLANNER.plan(CuttingOrder.of(CLOTH, three));
        assertThat(plan.placements().stream()
                        .filter(p -> p.piece().equals("sleeve"))
                        .map(PlacedPiece::copy))
                .containsExactlyInAnyOrder(1, 2, 3, 4, 5, 6);
        assertThat(plan.ruleOfThumb()).startsWith("3 x (");
        PlacedPieces.assertHold(plan, "three alike");
    }

    @Test
    void speaksOfToolsAndDefersOnFire() {
        List<String> cautions = Orders.PLANNER.plan(ORDER).cautions();
        assertThat(cautions).anyMatch(c -> c.contains("iron")).anyMatch(c -> c.contains("the venue and the law"));
    }

    private static Figure figure(double value, double low, double high) {
        return new Figure(value, low, high, Basis.TYPICAL, "test");
    }
}
