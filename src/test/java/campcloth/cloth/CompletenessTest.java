package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Holding;
import campcloth.cloth.Completeness.Gap;
import campcloth.cloth.Completeness.Tally;
import campcloth.cloth.KeptCloth.Origin;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** How much is known of a catalogue: counted by hand on small ones, by sums on drawn ones. */
class CompletenessTest {

    private static final Cloth LINEN = Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE);
    private static final Cloth WOOL = Samples.cloth("wool 100", Weave.TWILL, Finish.NONE);

    private static Figure figure(Basis basis) {
        return new Figure(20, 19, 21, basis, "test");
    }

    private static Tally tally(Completeness completeness, Origin origin) {
        return Objects.requireNonNull(completeness.byOrigin().get(origin));
    }

    private static KeptCloth kept(String id, Origin origin, Cloth cloth) {
        return new KeptCloth(id, 1, origin, cloth, Holding.COMMON);
    }

    @Test
    void eachPropertyIsCountedByItsBasis() {
        Completeness completeness = Completeness.of(
                List.of(
                        kept("a", Origin.OWN, LINEN.with(Property.WEIGHT_GSM, figure(Basis.MEASURED))),
                        kept("b", Origin.OWN, LINEN.with(Property.WEIGHT_GSM, figure(Basis.DECLARED))),
                        kept(
                                "c",
                                Origin.CATALOGUE,
                                LINEN.with(Property.WEIGHT_GSM, figure(Basis.TYPICAL))
                                        .with(Property.PRICE_PER_METRE, figure(Basis.ESTIMATED))),
                        kept("d", Origin.CATALOGUE, LINEN.with(Property.WEIGHT_GSM, figure(Basis.ESTIMATED))),
                        kept("e", Origin.EDITED, LINEN))::forEach,
                10);
        Tally whole = completeness.whole();
        assertThat(whole.cloths()).isEqualTo(5);
        assertThat(Arrays.stream(Basis.values()).map(basis -> whole.cloths(Property.WEIGHT_GSM, basis)))
                .containsExactly(1L, 1L, 1L, 2L);
        assertThat(whole.clothsWithout(Property.WEIGHT_GSM)).isZero();
        assertThat(whole.clothsWithout(Property.PRICE_PER_METRE)).isEqualTo(4);
        assertThat(whole.cloths(Property.WIDTH_CM, Basis.ESTIMATED)).isEqualTo(5);
        assertThat(tally(completeness, Origin.OWN).cloths()).isEqualTo(2);
        assertThat(tally(completeness, Origin.OWN).cloths(Property.WEIGHT_GSM, Basis.MEASURED))
                .isEqualTo(1);
        assertThat(tally(completeness, Origin.EDITED).cloths()).isEqualTo(1);
    }

    @Test
    void fibreDiametersAreWorthMeasuringOnlyWhereThereIsHair() {
        List<Gap> gaps = Completeness.of(
                        List.of(kept("linen", Origin.OWN, LINEN), kept("wool", Origin.OWN, WOOL))::forEach, 10)
                .worthMeasuring();
        assertThat(gaps).extracting(gap -> gap.kept().id()).containsExactly("linen", "wool");
        assertThat(gaps).extracting(Gap::measurable).containsExactly(7, 9);
        assertThat(gaps).extracting(Gap::known).containsExactly(0, 0);
        assertThat(gaps.get(0).missing()).doesNotContain(Property.FIBRE_DIAMETER_UM, Property.PRICE_PER_METRE);
        assertThat(gaps.get(1).missing()).contains(Property.FIBRE_DIAMETER_UM, Property.FIBRE_DIAMETER_CV_PERCENT);
    }

    @Test
    void theOneWithTheFewestKnownFiguresComesFirst() {
        Cloth better = LINEN.with(Property.WIDTH_CM, figure(Basis.DECLARED));
        Cloth best = better.with(Property.WEIGHT_GSM, figure(Basis.MEASURED));
        List<KeptCloth> catalogue =
                List.of(kept("a", Origin.OWN, best), kept("b", Origin.OWN, better), kept("c", Origin.OWN, LINEN));
        assertThat(Completeness.of(catalogue::forEach, 2).worthMeasuring())
                .extracting(gap -> gap.kept().id())
                .containsExactly("c", "b");
        assertThat(Completeness.of(catalogue::forEach, 0).worthMeasuring()).isEmpty();
    }

    @Test
    void aClothOfWhichAllIsKnownHasNoGap() {
        Cloth known = LINEN;
        for (Property property : Property.values()) {
            known = known.with(property, figure(Basis.MEASURED));
        }
        assertThat(Completeness.of(List.of(kept("a", Origin.OWN, known))::forEach, 10)
                        .worthMeasuring())
                .isEmpty();
    }

    @Test
    void theCountsOfEachPropertySumToTheClothsAndTheOriginsToTheWhole() {
        Samples.tries(61, 200, random -> {
            List<KeptCloth> catalogue = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                Cloth cloth = Samples.any(random);
                for (Property property : Property.values()) {
                    if (random.nextBoolean()) {
                        cloth = cloth.with(property, figure(Samples.pick(random, List.of(Basis.values()))));
                    }
                }
                catalogue.add(kept("c" + i, Samples.pick(random, List.of(Origin.values())), cloth));
            }
            Completeness completeness = Completeness.of(catalogue::forEach, 5);
            Tally whole = completeness.whole();
            for (Property property : Property.values()) {
                long sum = Arrays.stream(Basis.values())
                        .mapToLong(basis -> whole.cloths(property, basis))
                        .sum();
                assertThat(sum + whole.clothsWithout(property)).isEqualTo(30);
                assertThat(property != Property.PRICE_PER_METRE && whole.clothsWithout(property) > 0)
                        .isFalse();
                for (Basis basis : Basis.values()) {
                    assertThat(completeness.byOrigin().values().stream()
                                    .mapToLong(tally -> tally.cloths(property, basis))
                                    .sum())
                            .isEqualTo(whole.cloths(property, basis));
                }
            }
            List<KeptCloth> shuffled = new ArrayList<>(catalogue);
            Collections.shuffle(shuffled, new Random(random.nextLong()));
            assertThat(Completeness.of(shuffled::forEach, 5).worthMeasuring()).isEqualTo(completeness.worthMeasuring());
        });
    }

    @Test
    void anEmptyCatalogueIsCountedAsEmpty() {
        Completeness none = Completeness.of(nobody -> {}, 10);
        assertThat(none.whole().cloths()).isZero();
        assertThat(none.byOrigin()).isEmpty();
        assertThat(none.worthMeasuring()).isEmpty();
    }

    @Test
    void aLimitThatCannotBeIsRefused() {
        assertThatThrownBy(() -> Completeness.of(nobody -> {}, -1)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> Completeness.of(nobody -> {}, 101)).isInstanceOf(Refused.class);
    }
}
