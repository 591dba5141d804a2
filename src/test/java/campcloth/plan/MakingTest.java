package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.garment.Measurements;
import campcloth.garment.Options;
import campcloth.garment.SewnBy;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MakingTest {

    private static final CuttingOrder ORDER =
            CuttingOrder.of(Orders.priced(Orders.washed(140, 6, 4), 14.5), Orders.tunic(126));

    @Test
    void scrapForTheFacingIsAskedForWhereThereIsOne() {
        assertThat(Orders.PLANNER.plan(ORDER).notes()).anyMatch(n -> n.contains("30 x 40 cm for the facing"));
        CuttingOrder hood = CuttingOrder.of(
                ORDER.cloth(), new CuttingOrder.Line("hood", 1, Measurements.of(Map.of()), Options.USUAL));
        assertThat(Orders.PLANNER.plan(hood).notes())
                .anyMatch(n -> n.startsWith("At hand"))
                .noneMatch(n -> n.contains("facing"));
    }

    @Test
    void planCarriesTheWorkOfEachGarment() {
        CuttingOrder group = CuttingOrder.of(
                ORDER.cloth(),
                Orders.tunic(110),
                new CuttingOrder.Line("tunic", 2, Orders.wearer(126, 95), Options.USUAL));
        Making making = making(group);
        assertThat(making.garments()).extracting(GarmentWork::garment).containsExactly("tunic 1", "tunic 2");
        assertThat(making.garments()).extracting(GarmentWork::count).containsExactly(1, 2);
        assertThat(making.garments()).allSatisfy(work -> {
            assertThat(work.steps()).hasSizeGreaterThan(4);
            assertThat(work.fitting().opening()).isPresent();
            assertThat(work.fitting().rooms()).isNotEmpty();
        });
        double threadM = making.garments().stream()
                .mapToDouble(work -> work.count() * work.threadM())
                .sum();
        assertThat(Orders.PLANNER.plan(group).threadM()).isEqualTo(Math.ceil(threadM));
    }

    @Test
    void byHandTakesOtherThreadAndMoreTime() {
        CuttingOrder byHand = new CuttingOrder(
                ORDER.cloth(),
                ORDER.garments(),
                Optional.empty(),
                ORDER.fold(),
                ORDER.shopStepCm(),
                new Particulars(SewnBy.HAND, List.of(), Optional.empty()));
        GarmentWork hand = making(byHand).garments().get(0);
        GarmentWork machine = making(ORDER).garments().get(0);
        assertThat(hand.time().leastHours()).isGreaterThan(machine.time().mostHours());
        assertThat(hand.threadM()).isNotEqualTo(machine.threadM());
        assertThat(Orders.PLANNER.plan(byHand).notes()).anyMatch(note -> note.contains("sewing by hand takes about"));
    }

    @Test
    void facingLiesInTheOffcutsBesideThePiecesOfThePlan() {
        // two halves of 67 cm and two sleeves beside each other on 132.48 cm: 44 cm are free beside the sleeves
        SmallPieces small = making(ORDER).smallPieces().orElseThrow();
        assertThat(small.pieces()).containsExactly("facing");
        assertThat(small.inOffcuts()).isTrue();
        assertThat(small.lengthWithCm()).contains(small.lengthWithoutCm());
    }

    @Test
    void whereNothingIsLeftTheSmallPiecesTakeMoreCloth() {
        // 68 cm for a body of 67 and a straight sleeve of 54: no place for a facing beside anything
        CuttingOrder narrow = CuttingOrder.of(
                Orders.washed(70, 0, 0),
                new CuttingOrder.Line(
                        "tunic",
                        1,
                        Orders.wearer(126, 95).with("sleeveTopWidthCm", 50).with("cuffWidthCm", 50),
                        Options.USUAL));
        CuttingPlan plan = Orders.PLANNER.plan(narrow);
        SmallPieces small = plan.making().orElseThrow().smallPieces().orElseThrow();
        assertThat(small.inOffcuts()).isFalse();
        assertThat(small.placements()).isEmpty();
        assertThat(small.lengthWithCm().orElseThrow()).isGreaterThan(plan.netLengthCm());
        assertThat(plan.notes()).anyMatch(note -> note.contains("may come from scrap"));
    }

    @Test
    void smallPiecesInTheOffcutsOverlapNothing() {
        SplittableRandom random = new SplittableRandom(23);
        int found = 0;
        for (int round = 0; round < 20; round++) {
            Options flared = Options.USUAL.with("flareCm", random.nextInt(0, 15));
            CuttingOrder order = CuttingOrder.of(
                    Orders.washed(random.nextInt(110, 170), 5, 3),
                    new CuttingOrder.Line(
                            "tunic",
                            random.nextInt(1, 3),
                            Orders.wearer(random.nextInt(90, 130), random.nextInt(60, 130)),
                            flared));
            CuttingPlan plan = Orders.PLANNER.plan(order);
            SmallPieces small = plan.making().orElseThrow().smallPieces().orElseThrow();
            if (small.inOffcuts()) {
                found++;
                PlacedPieces.assertHoldBeside(plan, small.placements(), "round " + round + " of seed 23: " + order);
            }
        }
        assertThat(found).isGreaterThan(5);
    }

    @Test
    void savingIsTheRuleLessWhatIsBought() {
        CuttingPlan plan = Orders.PLANNER.plan(ORDER);
        RuleSaving rule = plan.making().orElseThrow().rule();
        // 2 x 95 + 53 = 243, rounded 250; bought are 220: 30 cm at 14.50 a metre
        assertThat(rule.savedCm()).isEqualTo(30);
        assertThat(rule.saved()).contains(new Money(4.35, "EUR"));
        assertThat(plan.notes()).anyMatch(note -> note.contains("saves 30 cm, 4.35 EUR"));
        // (102 x 2 + 60) / 0.94 + 2 = 282.9
        assertThat(rule.rowsBuyCm()).isEqualTo(290);
        assertThat(rule.ruleHolds()).isFalse();
    }

    /** The rule is feasible where its length holds its own rows with seams and hems; the plan is never longer then. */
    @Test
    void neverLongerThanTheRuleWhereTheRuleIsFeasible() {
        SplittableRandom random = new SplittableRandom(5);
        int feasible = 0;
        for (int round = 0; round < 60; round++) {
            ClothToCut cloth = Orders.washed(random.nextInt(80, 200), random.nextInt(0, 4), random.nextInt(0, 4));
            Options options = Options.USUAL
                    .with("seamAllowanceCm", random.nextDouble(1.2, 2.5))
                    .with("hemAllowanceCm", random.nextDouble(2, 5))
                    .with("cuffAllowanceCm", 2)
                    .with("flareCm", random.nextBoolean() ? random.nextInt(1, 20) : 0);
            CuttingOrder order = CuttingOrder.of(
                    random.nextBoolean() ? Orders.withNap(cloth) : cloth,
                    new CuttingOrder.Line(
                            "tunic",
                            random.nextInt(1, 4),
                            Orders.wearer(random.nextInt(80, 140), random.nextInt(60, 140)),
                            options));
            CutPieces pieces = CutPieces.of(order);
            if (TooNarrow.isTooNarrow(order, pieces)) {
                continue;
            }
            CuttingPlan plan = Orders.PLANNER.plan(order);
            RuleSaving rule = plan.making().orElseThrow().rule();
            String which = "round " + round + " of seed 5: " + order;
            double rowsCm = RowsLay.of(order.cloth().usableWidthCm(), pieces).lengthCm();
            assertThat(plan.openLengthCm()).as(which).isLessThanOrEqualTo(rowsCm + 1e-9);
            assertThat(plan.buyLengthCm()).as(which).isLessThanOrEqualTo(rule.rowsBuyCm());
            if (rule.ruleHolds()) {
                feasible++;
                assertThat(plan.buyLengthCm()).as(which).isLessThanOrEqualTo(plan.ruleOfThumbCm());
                assertThat(rule.savedCm()).as(which).isGreaterThanOrEqualTo(0);
            }
        }
        assertThat(feasible).isGreaterThan(4);
    }

    @Test
    void rowsAreARealLayout() {
        SplittableRandom random = new SplittableRandom(29);
        for (int round = 0; round < 40; round++) {
            Options options =
                    Options.USUAL.with("flareCm", random.nextInt(0, 12)).with("centreSeams", true);
            CuttingOrder order = CuttingOrder.of(
                    Orders.washed(random.nextInt(80, 200), 3, 3),
                    new CuttingOrder.Line("tunic", random.nextInt(1, 4), Orders.wearer(110, 90), options),
                    Orders.tunic(random.nextInt(90, 120)));
            CutPieces pieces = CutPieces.of(order);
            Lay rows = RowsLay.of(order.cloth().usableWidthCm(), pieces);
            String which = "round " + round + " of seed 29: " + order;
            assertThat(rows.pieces())
                    .as(which)
                    .hasSize(pieces.cuts().stream()
                            .mapToInt(CutPieces.Cut::count)
                            .sum());
            PlacedPieces.assertApart(rows.pieces(), order.cloth().usableWidthCm(), rows.lengthCm(), which);
            double areaCm2 = rows.pieces().stream()
                    .mapToDouble(p -> campcloth.layout.Outline.of(p.outlineCm()).areaCm2())
                    .sum();
            assertThat(areaCm2).as(which).isCloseTo(pieces.areaCm2(), within(1e-6));
        }
    }

    private static Making making(CuttingOrder order) {
        return Orders.PLANNER.plan(order).making().orElseThrow();
    }
}
