package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.Refused;
import campcloth.garment.SewnBy;
import campcloth.layout.AtHand;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LengthsAtHandTest {

    /** Two bodies of 67 x 102 cm and two sleeves of 44 x 60; 138 cm are usable. */
    private static final ClothToCut CLOTH = Orders.priced(Orders.washed(140, 0, 0), 10);

    @Test
    void sleevesComeFromTheSmallLengthAndTheBodiesFromTheBolt() {
        SeveralLengths several = divided(new AtHand(70, Optional.of(100.0), Optional.empty()));
        // 98 cm hold both sleeves of 44 abreast
        assertThat(names(several.lengths().get(0).pieces())).containsExactlyInAnyOrder("sleeve 1", "sleeve 2");
        assertThat(several.lengths().get(0).usedCm()).isCloseTo(60, within(0.05));
        assertThat(several.boltNetCm()).isCloseTo(102, within(0.05));
        // 102 + 2 rounded up
        assertThat(several.buyLengthCm()).isEqualTo(110);
        assertThat(several.cost()).contains(new Money(11, "EUR"));
    }

    @Test
    void nothingIsBoughtWhereTheLengthsHoldEverything() {
        SeveralLengths several = divided(
                new AtHand(60, Optional.empty(), Optional.empty()),
                new AtHand(102, Optional.empty(), Optional.empty()));
        assertThat(several.buyLengthCm()).isZero();
        assertThat(several.boltPieces()).isEmpty();
        assertThat(names(several.lengths().get(1).pieces())).containsExactlyInAnyOrder("front 1", "back 1");
    }

    @Test
    void lengthsShrinkLikeTheCloth() {
        CuttingOrder order = order(Orders.washed(140, 10, 0), new AtHand(100, Optional.of(100.0), Optional.empty()));
        SeveralLengths several = LengthsAtHand.of(order, CutPieces.of(order)).orElseThrow();
        assertThat(several.lengths().get(0).lengthCm()).isCloseTo(90, within(1e-9));
        assertThat(several.lengths().get(0).usableWidthCm()).isCloseTo(98, within(1e-9));
    }

    @Test
    void aLengthThatIsTooNarrowHoldsNothing() {
        SeveralLengths several = divided(
                new AtHand(500, Optional.of(30.0), Optional.empty()),
                new AtHand(20, Optional.empty(), Optional.empty()));
        assertThat(several.lengths()).allMatch(on -> on.pieces().isEmpty() && on.usedCm() == 0);
        assertThat(several.boltNetCm()).isCloseTo(162, within(0.05));
    }

    @Test
    void everyPieceIsCutOnceAndLiesApart() {
        SplittableRandom random = new SplittableRandom(41);
        for (int round = 0; round < 8; round++) {
            List<AtHand> atHand = new ArrayList<>();
            for (int i = 0; i < random.nextInt(1, 4); i++) {
                atHand.add(new AtHand(
                        random.nextInt(30, 200), Optional.of((double) random.nextInt(40, 150)), Optional.empty()));
            }
            CuttingOrder order = order(CLOTH, atHand.toArray(AtHand[]::new));
            CutPieces pieces = CutPieces.of(order);
            SeveralLengths several = LengthsAtHand.of(order, pieces).orElseThrow();
            String which = "round " + round + " of seed 41: " + atHand;
            several.lengths()
                    .forEach(on -> PlacedPieces.assertApart(on.pieces(), on.usableWidthCm(), on.lengthCm(), which));
            PlacedPieces.assertApart(several.boltPieces(), order.cloth().usableWidthCm(), several.boltNetCm(), which);
            for (int i = 0; i < several.lengths().size(); i++) {
                assertThat(several.lengths().get(i).pieces())
                        .as(which)
                        .extracting(PlacedPiece::atHand)
                        .allMatch(Optional.of(i + 1)::equals);
            }
            assertThat(several.boltPieces())
                    .as(which)
                    .allMatch(placed -> placed.atHand().isEmpty());
            assertThat(several.boltNetCm())
                    .as(which)
                    .isLessThanOrEqualTo(
                            GreedyDivision.of(order, pieces).orElseThrow().boltNetCm() + 0.05);
            List<PlacedPiece> all = Stream.concat(
                            several.lengths().stream().flatMap(on -> on.pieces().stream()),
                            several.boltPieces().stream())
                    .toList();
            assertThat(names(all)).as(which).containsExactlyInAnyOrder("front 1", "back 1", "sleeve 1", "sleeve 2");
        }
    }

    @Test
    void tooManyLengthsAreRefused() {
        List<AtHand> nine = Collections.nCopies(9, new AtHand(50, Optional.empty(), Optional.empty()));
        assertThatThrownBy(() -> new Particulars(SewnBy.MACHINE, nine, Optional.empty()))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("lengthsAtHand");
    }

    private static List<String> names(List<PlacedPiece> pieces) {
        return pieces.stream().map(p -> p.piece() + " " + p.copy()).toList();
    }

    private static SeveralLengths divided(AtHand... atHand) {
        CuttingOrder order = order(CLOTH, atHand);
        return LengthsAtHand.of(order, CutPieces.of(order)).orElseThrow();
    }

    private static CuttingOrder order(ClothToCut cloth, AtHand... atHand) {
        return new CuttingOrder(
                cloth,
                List.of(Orders.tunic(126)),
                Optional.empty(),
                Fold.ANY,
                CuttingOrder.USUAL_STEP_CM,
                new Particulars(SewnBy.MACHINE, List.of(atHand), Optional.empty()));
    }
}
