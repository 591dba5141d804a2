package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.garment.Options;
import campcloth.garment.SewnBy;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MatchedLayTest {

    @Test
    void rowsBeginWhereTheRepeatDoes() {
        // 138 cm usable: bodies of 67 x 102 abreast; sleeves from the next line of 8 cm on: 104 + 60
        Matched matched = matched(140, 0, new Repeat(Optional.of(8.0), Optional.empty()), 126, 0);
        assertThat(matched.lengthCm()).isCloseTo(164, within(1e-9));
        assertThat(matched.buyLengthCm()).isEqualTo(170);
        assertThat(matched.extraCm()).isZero();
        Matched large = matched(140, 0, new Repeat(Optional.of(40.0), Optional.empty()), 126, 0);
        assertThat(large.lengthCm()).isCloseTo(120 + 60, within(1e-9));
        assertThat(large.extraCm()).isEqualTo(20);
    }

    @Test
    void stripesAcrossKeepTheMiddlesApart() {
        // middles on multiples of 50: 50 and 100 are nearer than 67 cm, so that the bodies no longer lie abreast
        Matched matched = matched(140, 0, new Repeat(Optional.empty(), Optional.of(50.0)), 126, 0);
        assertThat(matched.lengthCm()).isGreaterThan(2 * 102);
    }

    @Test
    void repeatShrinksWithTheCloth() {
        Matched matched = matched(160, 10, new Repeat(Optional.of(10.0), Optional.of(10.0)), 110, 0);
        assertThat(matched.repeatLengthCm().orElseThrow()).isCloseTo(9, within(1e-9));
        assertThat(matched.repeatWidthCm().orElseThrow()).isCloseTo(9, within(1e-9));
    }

    @Test
    void everyPieceLiesOnThePatternAndApart() {
        SplittableRandom random = new SplittableRandom(43);
        for (int round = 0; round < 30; round++) {
            Repeat repeat = new Repeat(
                    Optional.of(random.nextDouble(1, 30)),
                    random.nextBoolean() ? Optional.of(random.nextDouble(1, 12)) : Optional.empty());
            CuttingOrder order = order(
                    random.nextInt(120, 170), random.nextInt(0, 8), repeat, random.nextInt(90, 130), random.nextInt(9));
            CutPieces pieces = CutPieces.of(order);
            Matched matched = MatchedLay.of(order, pieces, 0).orElseThrow();
            String which = "round " + round + " of seed 43: " + order;
            PlacedPieces.assertApart(matched.placements(), order.cloth().usableWidthCm(), matched.lengthCm(), which);
            assertThat(matched.placements())
                    .as(which)
                    .hasSize(pieces.cuts().stream()
                            .mapToInt(CutPieces.Cut::count)
                            .sum());
            for (PlacedPiece placed : matched.placements()) {
                assertThat(placed.turned()).as(which).isFalse();
                double alongCm = matched.repeatLengthCm().orElseThrow();
                assertThat(offRepeat(placed.yCm(), alongCm)).as(which).isLessThan(1e-6);
                double middle = placed.xCm() + widthCm(placed) / 2;
                matched.repeatWidthCm()
                        .ifPresent(cm ->
                                assertThat(offRepeat(middle, cm)).as(which).isLessThan(1e-6));
            }
        }
    }

    @Test
    void plainClothHasNothingToMatch() {
        CuttingOrder order = order(140, 0, Repeat.NONE, 126, 0);
        assertThat(MatchedLay.of(order, CutPieces.of(order), 0)).isEmpty();
    }

    private static double widthCm(PlacedPiece placed) {
        return placed.outlineCm().stream().mapToDouble(p -> p.xCm()).max().orElseThrow() - placed.xCm();
    }

    private static double offRepeat(double cm, double repeatCm) {
        return Math.abs(cm - Math.rint(cm / repeatCm) * repeatCm);
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
