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
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.random.RandomGenerator;
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

    private static Cloths cloths(List<KeptCloth> all) {
        return new ClothsInMemory(all);
    }

    private static KeptCloth kept(String id, Origin origin, Cloth cloth) {
        return new KeptCloth(id, 1, origin, cloth, Holding.COMMON);
    }

    @Test
    void eachPropertyIsCountedByItsBasis() {
        Completeness completeness = Completeness.of(
                cloths(List.of(
                        kept("a", Origin.OWN, LINEN.with(Property.WEIGHT_GSM, figure(Basis.MEASURED))),
                        kept("b", Origin.OWN, LINEN.with(Property.WEIGHT_GSM, figure(Basis.DECLARED))),
                        kept(
                                "c",
                                Origin.CATALOGUE,
                                LINEN.with(Property.WEIGHT_GSM, figure(Basis.TYPICAL))
                                        .with(Property.PRICE_PER_METRE, figure(Basis.ESTIMATED))),
                        kept("d", Origin.CATALOGUE, LINEN.with(Property.WEIGHT_GSM, figure(Basis.ESTIMATED))),
                        kept("e", Origin.EDITED, LINEN))),
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
                        cloths(List.of(kept("linen", Origin.OWN, LINEN), kept("wool", Origin.OWN, WOOL))), 10)
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
        assertThat(Completeness.of(cloths(catalogue), 2).worthMeasuring())
                .extracting(gap -> gap.kept().id())
                .containsExactly("c", "b");
        assertThat(Completeness.of(cloths(catalogue), 0).worthMeasuring()).isEmpty();
    }

    @Test
    void aClothOfWhichAllIsKnownHasNoGap() {
        Cloth known = LINEN;
        for (Property property : Property.values()) {
            known = known.with(property, figure(Basis.MEASURED));
        }
        assertThat(Completeness.of(cloths(List.of(kept("a", Origin.OWN, known))), 10)
                        .worthMeasuring())
                .isEmpty();
    }

    @Test
    void theCountsOfEachPropertySumToTheClothsAndTheOriginsToTheWhole() {
        Samples.tries(61, 200, random -> {
            List<KeptCloth> catalogue = drawn(random, 30);
            Completeness completeness = Completeness.of(cloths(catalogue), 5);
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
            assertThat(Completeness.of(cloths(shuffled), 5).worthMeasuring()).isEqualTo(completeness.worthMeasuring());
        });
    }

    /** The columns tell the same as looking at each whole cloth. */
    @Test
    void whatIsCountedIsWhatACountOneByOneComesTo() {
        Samples.tries(62, 200, random -> {
            List<KeptCloth> catalogue = drawn(random, random.nextInt(40));
            int limit = random.nextInt(12);
            Completeness completeness = Completeness.of(cloths(catalogue), limit);
            assertThat(counts(completeness.whole())).isEqualTo(counted(catalogue));
            for (Origin origin : Origin.values()) {
                List<KeptCloth> of = catalogue.stream()
                        .filter(kept -> kept.origin() == origin)
                        .toList();
                assertThat(completeness.byOrigin().containsKey(origin)).isEqualTo(!of.isEmpty());
                if (!of.isEmpty()) {
                    assertThat(counts(tally(completeness, origin))).isEqualTo(counted(of));
                }
            }
            assertThat(completeness.worthMeasuring())
                    .isEqualTo(catalogue.stream()
                            .flatMap(kept -> Gap.of(kept).stream())
                            .sorted(Comparator.comparingDouble(Gap::knownShare)
                                    .thenComparing(gap -> gap.kept().id()))
                            .limit(limit)
                            .toList());
        });
    }

    /** By property, how many cloths are known by each basis, and of how many nothing is. */
    private static Map<Property, List<Long>> counted(List<KeptCloth> cloths) {
        Map<Property, List<Long>> counted = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            List<Long> counts = new ArrayList<>(Collections.nCopies(Basis.values().length + 1, 0L));
            for (KeptCloth kept : cloths) {
                Optional<Basis> written = kept.cloth().figure(property).map(Figure::basis);
                int place = written.map(Basis::ordinal)
                        .orElse(property == Property.PRICE_PER_METRE ? 4 : Basis.ESTIMATED.ordinal());
                counts.set(place, counts.get(place) + 1);
            }
            counted.put(property, counts);
        }
        return counted;
    }

    private static Map<Property, List<Long>> counts(Tally tally) {
        Map<Property, List<Long>> counts = new EnumMap<>(Property.class);
        for (Property property : Property.values()) {
            List<Long> of = new ArrayList<>();
            for (Basis basis : Basis.values()) {
                of.add(tally.cloths(property, basis));
            }
            of.add(tally.clothsWithout(property));
            counts.put(property, of);
        }
        return counts;
    }

    private static List<KeptCloth> drawn(RandomGenerator random, int cloths) {
        List<KeptCloth> catalogue = new ArrayList<>();
        for (int i = 0; i < cloths; i++) {
            Cloth cloth = Samples.any(random);
            for (Property property : Property.values()) {
                if (random.nextInt(3) > 0) {
                    cloth = cloth.with(property, figure(Samples.pick(random, List.of(Basis.values()))));
                }
            }
            catalogue.add(kept("c" + i, Samples.pick(random, List.of(Origin.values())), cloth));
        }
        return catalogue;
    }

    @Test
    void anEmptyCatalogueIsCountedAsEmpty() {
        Completeness none = Completeness.of(cloths(List.of()), 10);
        assertThat(none.whole().cloths()).isZero();
        assertThat(none.byOrigin()).isEmpty();
        assertThat(none.worthMeasuring()).isEmpty();
    }

    @Test
    void aLimitThatCannotBeIsRefused() {
        assertThatThrownBy(() -> Completeness.of(cloths(List.of()), -1)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> Completeness.of(cloths(List.of()), 101)).isInstanceOf(Refused.class);
    }
}
