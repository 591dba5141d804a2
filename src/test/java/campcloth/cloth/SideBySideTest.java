package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.ComparedFigure.Quantity;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Several cloths side by side; the prices follow from definitions. */
class SideBySideTest {

    private static final Cloth LINEN = Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 200);

    private static Cloth weighing(double low, double value, double high) {
        return LINEN.with(Property.WEIGHT_GSM, Samples.known(low, value, high));
    }

    private static ComparedFigure row(Quantity quantity, Cloth... cloths) {
        return SideBySide.of(List.of(cloths)).figures().stream()
                .filter(figure -> figure.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    private static Cloth priced(double price, double widthCm, double warpPercent, double weftPercent) {
        return LINEN.with(Property.PRICE_PER_METRE, Samples.known(price))
                .with(Property.WIDTH_CM, Samples.known(widthCm))
                .with(Property.SHRINK_WARP_PERCENT, Samples.known(warpPercent))
                .with(Property.SHRINK_WEFT_PERCENT, Samples.known(weftPercent));
    }

    @Test
    void intervalsThatDoNotMeetAreAClearDifference() {
        ComparedFigure apart = row(Quantity.WEIGHT, weighing(190, 200, 210), weighing(211, 220, 230));
        assertThat(apart.contrast()).isEqualTo(Contrast.CLEAR);
        assertThat(apart.least()).contains(0);
        assertThat(apart.most()).contains(1);
        ComparedFigure touching = row(Quantity.WEIGHT, weighing(190, 200, 210), weighing(210, 220, 230));
        assertThat(touching.contrast()).isEqualTo(Contrast.WITHIN_ERROR);
        assertThat(touching.least()).isEmpty();
        assertThat(touching.most()).isEmpty();
    }

    @Test
    void twoThatShareAnEndAreNotTheBest() {
        ComparedFigure row =
                row(Quantity.WEIGHT, weighing(190, 200, 210), weighing(195, 205, 215), weighing(300, 310, 320));
        assertThat(row.contrast()).isEqualTo(Contrast.CLEAR);
        assertThat(row.least()).isEmpty();
        assertThat(row.most()).contains(2);
    }

    /** The slack of bare figures is a project choice: 5 %, one point of shrinkage, none for prices. */
    @Test
    void bareFiguresHaveSomeSlack() {
        Cloth a = LINEN.with(Property.WEIGHT_GSM, declared(200)).with(Property.SHRINK_WARP_PERCENT, declared(4));
        Cloth b = LINEN.with(Property.WEIGHT_GSM, declared(215)).with(Property.SHRINK_WARP_PERCENT, declared(5.5));
        Cloth c = LINEN.with(Property.WEIGHT_GSM, declared(225)).with(Property.SHRINK_WARP_PERCENT, declared(6.5));
        assertThat(row(Quantity.WEIGHT, a, b).contrast()).isEqualTo(Contrast.WITHIN_ERROR);
        assertThat(row(Quantity.WEIGHT, a, c).contrast()).isEqualTo(Contrast.CLEAR);
        assertThat(row(Quantity.SHRINK_WARP, a, b).contrast()).isEqualTo(Contrast.WITHIN_ERROR);
        assertThat(row(Quantity.SHRINK_WARP, a, c).contrast()).isEqualTo(Contrast.CLEAR);
        Cloth dear = LINEN.with(Property.PRICE_PER_METRE, declared(10.1));
        assertThat(row(Quantity.PRICE_PER_METRE, LINEN.with(Property.PRICE_PER_METRE, declared(10)), dear)
                        .contrast())
                .isEqualTo(Contrast.CLEAR);
    }

    @Test
    void aMeasurementWithoutAnIntervalIsNoExactOne() {
        Cloth a = LINEN.with(Property.WEIGHT_GSM, Figure.exact(185, Basis.MEASURED, "test"));
        Cloth b = LINEN.with(Property.WEIGHT_GSM, Figure.exact(185.5, Basis.MEASURED, "test"));
        assertThat(row(Quantity.WEIGHT, a, b).contrast()).isEqualTo(Contrast.WITHIN_ERROR);
        assertThat(row(Quantity.WEIGHT, a, b).least()).isEmpty();
    }

    /** The width is told without an interval: a cent by the metre decides nothing by area. */
    @Test
    void aPriceByAreaIsNoMoreExactThanItsWidth() {
        Cloth a = priced(10, 150, 5, 3);
        Cloth b = priced(10.01, 150, 5, 3);
        assertThat(row(Quantity.PRICE_PER_METRE, a, b).least()).contains(0);
        assertThat(row(Quantity.PRICE_PER_M2, a, b).least()).isEmpty();
    }

    private static Figure declared(double value) {
        return Figure.exact(value, Basis.DECLARED, "test");
    }

    /** 30 EUR a metre of 150 cm: 20 EUR/m2; of 152 cm, 10 % across and 5 % along lost: 30 / (1.5 x 0.9 x 0.95). */
    @Test
    void pricesByAreaFollowFromTheirDefinition() {
        Cloth cloth = priced(30, 150, 5, 10);
        assertThat(value(row(Quantity.PRICE_PER_M2, cloth, LINEN))).isCloseTo(20, within(1e-9));
        Cloth wider = priced(30, 152, 5, 10);
        assertThat(value(row(Quantity.PRICE_PER_USABLE_M2, wider, LINEN)))
                .isCloseTo(30 / (1.5 * 0.9 * 0.95), within(1e-9));
        Cloth waxed = Samples.refinished(wider, Finish.WAXED);
        assertThat(value(row(Quantity.PRICE_PER_USABLE_M2, waxed, LINEN))).isCloseTo(20, within(1e-9));
    }

    @Test
    void aPriceThatNobodySaidIsNotMadeUpAndNobodyIsTheCheapest() {
        ComparedFigure two = row(Quantity.PRICE_PER_METRE, priced(3, 150, 5, 5), LINEN);
        assertThat(two.values().get(1)).isEmpty();
        assertThat(two.contrast()).isEqualTo(Contrast.UNKNOWN);
        ComparedFigure three = row(Quantity.PRICE_PER_METRE, priced(3, 150, 5, 5), priced(9, 150, 5, 5), LINEN);
        assertThat(three.contrast()).isEqualTo(Contrast.CLEAR);
        assertThat(three.least()).isEmpty();
    }

    /** Of two cloths at one price by the metre the wider costs less by area. */
    @Test
    void theWiderIsTheCheaperByArea() {
        SideBySide compared = SideBySide.of(List.of(priced(20, 140, 5, 5), priced(20, 280, 5, 5)));
        assertThat(compared.bestAt(1))
                .contains("the widest", "the cheapest by area")
                .doesNotContain("the lightest");
        assertThat(compared.bestAt(0)).isEmpty();
    }

    @Test
    void coarseWoolPricklesMoreThanLinenAndScratchesLess() {
        Cloth coarse = Samples.cloth("wool 100", Weave.TWILL, Finish.FULLED, 450)
                .with(Property.FIBRE_DIAMETER_UM, Samples.known(34, 35, 36));
        ComparedFigure prickle = row(Quantity.PRICKLE, coarse, LINEN);
        assertThat(prickle.contrast()).isEqualTo(Contrast.CLEAR);
        assertThat(prickle.least()).contains(1);
        assertThat(row(Quantity.PRICKLE, LINEN, Samples.cloth("cotton 100", Weave.PLAIN, Finish.NONE, 200))
                        .contrast())
                .as("neither prickles")
                .isEqualTo(Contrast.WITHIN_ERROR);
        assertThat(row(Quantity.BAST_ROUGHNESS, coarse, LINEN)
                        .values()
                        .get(0)
                        .orElseThrow()
                        .value())
                .isZero();
    }

    @Test
    void theOrderAskedChangesNoFigureAndNoContrast() {
        Samples.tries(51, 300, random -> {
            List<Cloth> cloths = drawn(random);
            SideBySide one = SideBySide.of(cloths);
            List<Cloth> turned = new java.util.ArrayList<>(cloths);
            Collections.reverse(turned);
            SideBySide other = SideBySide.of(turned);
            int last = cloths.size() - 1;
            for (int i = 0; i < one.figures().size(); i++) {
                assertThat(other.figures().get(i).contrast())
                        .isEqualTo(one.figures().get(i).contrast());
            }
            for (int place = 0; place <= last; place++) {
                assertThat(other.bestAt(last - place)).isEqualTo(one.bestAt(place));
            }
        });
    }

    /** What is called the best keeps its name only against cloths whose intervals lie beyond its own. */
    @Test
    void whoIsBestIsClearOfAllOthers() {
        Samples.tries(52, 300, random -> {
            for (ComparedFigure row : SideBySide.of(drawn(random)).figures()) {
                row.least()
                        .ifPresent(place -> othersThan(place, row)
                                .forEach(other -> assertThat(other.low())
                                        .isGreaterThan(row.values()
                                                .get(place)
                                                .orElseThrow()
                                                .high())));
                if (row.contrast() != Contrast.CLEAR) {
                    assertThat(row.least().or(row::most)).isEmpty();
                }
            }
        });
    }

    private static List<Figure> othersThan(int place, ComparedFigure row) {
        return IntStream.range(0, row.values().size())
                .filter(i -> i != place)
                .mapToObj(i -> row.values().get(i))
                .flatMap(Optional::stream)
                .toList();
    }

    private static List<Cloth> drawn(SplittableRandom random) {
        return IntStream.range(0, 2 + random.nextInt(11))
                .mapToObj(i -> Samples.any(random)
                        .with(Property.WEIGHT_GSM, Samples.known(Samples.between(random, 30, 800)))
                        .with(Property.PRICE_PER_METRE, Samples.known(Samples.between(random, 0, 60))))
                .toList();
    }

    @Test
    void oneClothOrTooManyAreRefused() {
        assertThatThrownBy(() -> SideBySide.of(List.of(LINEN))).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> SideBySide.of(Collections.nCopies(13, LINEN))).isInstanceOf(Refused.class);
    }

    private static double value(ComparedFigure row) {
        return row.values().get(0).orElseThrow().value();
    }
}
