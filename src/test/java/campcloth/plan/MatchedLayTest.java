package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.garment.Options;
import campcloth.garment.SewnBy;
import campcloth.layout.Effort;
import campcloth.layout.Layout;
import campcloth.layout.LayoutDrawing;
import campcloth.layout.Piece;
import campcloth.layout.Placement;
import campcloth.layout.Point;
import campcloth.layout.Repeat;
import campcloth.layout.Verification;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MatchedLayTest {

    private static final Search SEARCH = Search.of(new Effort(0.05, 1));

    @Test
    void hemsMeetOneLineAndAreSeldomAnyDearer() {
        // 138 cm usable: bodies of 67 x 102 abreast, sleeves of 44 x 60 above them: 162 with nothing to match
        Matched matched = matched(140, 0, along(8), 126, 0);
        assertThat(matched.lengthCm()).isBetween(162.0 - 1e-6, 164.0 + 1e-6);
        assertThat(matched.buyLengthCm()).isEqualTo(170);
        assertThat(matched.extraCm()).isZero();
    }

    @Test
    void stripesAcrossKeepTheMiddlesApart() {
        // stripes 50 cm apart are nearer than the 67 cm of a body, so that bodies no longer lie abreast
        Matched matched = matched(140, 0, Repeat.every(Optional.empty(), Optional.of(50.0)), 126, 0);
        assertThat(matched.lengthCm()).isGreaterThanOrEqualTo(2 * 102 - 1e-6);
    }

    @Test
    void repeatShrinksWithTheCloth() {
        Matched matched = matched(160, 10, Repeat.every(Optional.of(10.0), Optional.of(10.0)), 110, 0);
        assertThat(matched.repeatLengthCm().orElseThrow()).isCloseTo(9, within(1e-9));
        assertThat(matched.repeatWidthCm().orElseThrow()).isCloseTo(9, within(1e-9));
    }

    @Test
    void soSmallARepeatIsNotMatchedOnceItShrank() {
        CuttingOrder order = order(140, 10, along(0.5), 126, 0);
        assertThat(MatchedLay.of(order, CutPieces.of(order), SEARCH)).isEmpty();
    }

    @Test
    void everyPieceLiesOnThePatternAndApartAndRowsTakeNoLess() {
        SplittableRandom random = new SplittableRandom(43);
        for (int round = 0; round < 30; round++) {
            Repeat repeat = Repeat.every(
                    Optional.of(random.nextDouble(1, 30)),
                    random.nextBoolean() ? Optional.of(random.nextDouble(1, 12)) : Optional.empty());
            CuttingOrder order = order(
                    random.nextInt(120, 170), random.nextInt(0, 8), repeat, random.nextInt(90, 130), random.nextInt(9));
            CutPieces pieces = CutPieces.of(order);
            MatchedLay lay = MatchedLay.of(order, pieces, SEARCH).orElseThrow();
            Matched matched = lay.matched(0);
            String which = "round " + round + " of seed 43: " + order;
            PlacedPieces.assertApart(matched.placements(), order.cloth().usableWidthCm(), matched.lengthCm(), which);
            assertThat(matched.placements())
                    .as(which)
                    .hasSize(pieces.cuts().stream()
                            .mapToInt(CutPieces.Cut::count)
                            .sum());
            assertThat(matched.placements()).as(which).noneMatch(PlacedPiece::turned);
            assertThat(Verification.faults(lay.layout())).as(which).isEmpty();
            assertOnOnePhase(lay.layout(), matched, which);
            assertThat(matched.lengthCm())
                    .as(which)
                    .isLessThanOrEqualTo(
                            MatchedRows.of(order, pieces).map(Lay::lengthCm).orElse(Double.POSITIVE_INFINITY) + 1e-6);
        }
    }

    @Test
    void thePlanIsNoLongerThanItsMatchedLayout() {
        SplittableRandom random = new SplittableRandom(44);
        for (int round = 0; round < 6; round++) {
            CuttingOrder order =
                    order(random.nextInt(120, 170), 4, along(random.nextDouble(1, 30)), random.nextInt(90, 130), 0);
            CuttingPlan plan = Orders.PLANNER.plan(order);
            Matched matched = plan.making().orElseThrow().matched().orElseThrow();
            String which = "round " + round + " of seed 44: " + order;
            assertThat(matched.lengthCm()).as(which).isGreaterThanOrEqualTo(plan.openLengthCm() - 1e-9);
            assertThat(matched.buyLengthCm()).as(which).isGreaterThanOrEqualTo(plan.buyLengthCm());
        }
    }

    @Test
    void theDrawingOfTheMatchedLayoutShowsTheLinesThatTheHemsMeet() {
        CuttingPlan plan =
                Orders.PLANNER.plan(order(140, 4, Repeat.every(Optional.of(12.0), Optional.of(9.0)), 110, 5));
        Matched matched = plan.making().orElseThrow().matched().orElseThrow();
        var sheet = plan.matchedSheet().orElseThrow();
        assertThat(sheet.stripes()).hasSize(2);
        for (var stripes : sheet.stripes()) {
            PlacedPiece front = matched.placements().stream()
                    .filter(placed -> placed.piece().equals("front"))
                    .findFirst()
                    .orElseThrow();
            double spot = stripes.along() ? front.xCm() + widthCm(front) / 2 : front.yCm();
            assertThat(off(spot - stripes.firstCm(), stripes.everyCm())).isLessThan(1e-6);
        }
        assertThat(sheet.lengthCm()).isEqualTo(matched.lengthCm());
        assertThat(LayoutDrawing.svg(sheet)).contains("pattern matched");
        assertThat(plan.sheet().stripes()).isEmpty();
    }

    @Test
    void plainClothHasNothingToMatch() {
        CuttingOrder order = order(140, 0, Optional.empty(), 126, 0);
        assertThat(MatchedLay.of(order, CutPieces.of(order), SEARCH)).isEmpty();
        assertThat(Orders.PLANNER.plan(order).matchedSheet()).isEmpty();
    }

    /** Worked out from the outlines alone: the spots of a group lie whole repeats apart. */
    private static void assertOnOnePhase(Layout layout, Matched matched, String which) {
        Map<String, Point> first = new HashMap<>();
        for (Placement placed : layout.placements()) {
            Piece piece = layout.pieceOf(placed);
            Point at = piece.match().orElseThrow().at();
            double fromLeft = at.xCm() - piece.outline().leftCm();
            double x = placed.xCm() + (placed.mirrored() ? piece.outline().widthCm() - fromLeft : fromLeft);
            double y = placed.yCm() + at.yCm() - piece.outline().lowCm();
            Point other = first.computeIfAbsent(piece.match().orElseThrow().group(), group -> new Point(x, y));
            matched.repeatLengthCm()
                    .ifPresent(
                            cm -> assertThat(off(y - other.yCm(), cm)).as(which).isLessThan(1e-6));
            matched.repeatWidthCm()
                    .ifPresent(
                            cm -> assertThat(off(x - other.xCm(), cm)).as(which).isLessThan(1e-6));
        }
        assertThat(first).as(which).containsKeys("hem", "sleeve");
    }

    private static double widthCm(PlacedPiece placed) {
        return placed.outlineCm().stream().mapToDouble(p -> p.xCm()).max().orElseThrow() - placed.xCm();
    }

    private static double off(double cm, double repeatCm) {
        return Math.abs(cm - Math.rint(cm / repeatCm) * repeatCm);
    }

    private static Repeat along(double cm) {
        return Repeat.every(Optional.of(cm), Optional.empty());
    }

    private static Matched matched(double widthCm, double shrinks, Repeat repeat, double chestCm, double flareCm) {
        return Orders.PLANNER
                .plan(order(widthCm, shrinks, repeat, chestCm, flareCm))
                .making()
                .orElseThrow()
                .matched()
                .orElseThrow();
    }

    private static CuttingOrder order(double widthCm, double shrinks, Repeat repeat, double chestCm, double flareCm) {
        return order(widthCm, shrinks, Optional.of(repeat), chestCm, flareCm);
    }

    private static CuttingOrder order(
            double widthCm, double shrinks, Optional<Repeat> repeat, double chestCm, double flareCm) {
        return new CuttingOrder(
                Orders.washed(widthCm, shrinks, shrinks),
                List.of(new CuttingOrder.Line(
                        "tunic", 1, Orders.wearer(chestCm, 95), Options.USUAL.with("flareCm", flareCm))),
                Optional.empty(),
                Fold.ANY,
                CuttingOrder.USUAL_STEP_CM,
                new Particulars(SewnBy.MACHINE, List.of(), repeat));
    }
}
