package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Holding;
import campcloth.cloth.KeptCloth.Origin;
import campcloth.cloth.Kinship.Closeness;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.figure.Refused;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The nearest cloths of a catalogue; the scales are project choices. */
class AlikeTest {

    private static final List<KeptCloth> CATALOGUE = ShippedCatalogue.get().cloths().entrySet().stream()
            .map(entry -> new KeptCloth(entry.getKey(), 1, Origin.CATALOGUE, entry.getValue(), Holding.COMMON))
            .toList();

    private static final Cloths IN_MEMORY = new ClothsInMemory(CATALOGUE);

    private static KeptCloth kept(String id, Cloth cloth) {
        return new KeptCloth(id, 1, Origin.OWN, cloth, Holding.COMMON);
    }

    @Test
    void aClothOfTheCatalogueIsItsOwnNearest() {
        for (KeptCloth kept : CATALOGUE) {
            Neighbour nearest =
                    Alike.to(kept.cloth(), IN_MEMORY, 1).neighbours().get(0);
            assertThat(nearest.kinship().distance()).as(kept.id()).isZero();
        }
    }

    @Test
    void theOrderOfTheCatalogueChangesNothing() {
        Samples.tries(45, 60, random -> {
            List<KeptCloth> shuffled = new ArrayList<>(CATALOGUE);
            Collections.shuffle(shuffled, new Random(random.nextLong()));
            Cloth asked = Samples.drawn(random);
            int limit = 1 + random.nextInt(50);
            assertThat(Alike.to(asked, new ClothsInMemory(shuffled), limit))
                    .isEqualTo(Alike.to(asked, IN_MEMORY, limit));
        });
    }

    /** The bounded search finds what sorting the whole catalogue finds. */
    @Test
    void theNearestAreTheFirstOfAllSorted() {
        Samples.tries(46, 60, random -> {
            Cloth asked = Samples.drawn(random);
            List<String> sorted = CATALOGUE.stream()
                    .sorted(Comparator.comparingDouble((KeptCloth k) -> distance(asked, k.cloth()))
                            .thenComparing(KeptCloth::id))
                    .limit(7)
                    .map(KeptCloth::id)
                    .toList();
            assertThat(ids(Alike.to(asked, IN_MEMORY, 7))).isEqualTo(sorted);
        });
    }

    @Test
    void aClothOfTheCatalogueIsNoNeighbourOfItself() {
        for (KeptCloth kept : CATALOGUE) {
            assertThat(ids(Alike.to(kept, IN_MEMORY, 3))).hasSize(3).doesNotContain(kept.id());
        }
    }

    @Test
    void linenHasLinenForNeighboursAndWoolHasWool() {
        assertThat(Alike.to(Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 190), IN_MEMORY, 5)
                        .neighbours())
                .allSatisfy(n ->
                        assertThat(n.kept().cloth().blend().percentOf("flax")).isEqualTo(100))
                .allSatisfy(n -> assertThat(n.kinship().closeness()).isNotEqualTo(Closeness.DISTANT));
        assertThat(Alike.to(Samples.cloth("wool 100", Weave.TWILL, Finish.FULLED, 450), IN_MEMORY, 5)
                        .neighbours())
                .allSatisfy(n ->
                        assertThat(n.kept().cloth().blend().percentOf("wool")).isGreaterThanOrEqualTo(80));
    }

    @Test
    void estimatesAreHeldAgainstWhatNearNeighboursKnow() {
        Cloth asked = Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 200);
        Figure estimate = Estimates.complete(asked).required(Property.THICKNESS_MM);
        Cloth same = asked.with(Property.THICKNESS_MM, Samples.known(estimate.value()));
        Cloth thick = asked.with(Property.THICKNESS_MM, Samples.known(estimate.high() * 1.5));
        Cloth guessed = asked.with(Property.THICKNESS_MM, new Figure(50, 40, 60, Basis.ESTIMATED, "test"));
        Cloth far = Samples.cloth("wool 100", Weave.FELT, Finish.NONE, 200)
                .with(Property.THICKNESS_MM, Samples.known(estimate.value()));
        EstimateCheck check = thicknessCheck(asked, Map.of("a", same, "b", thick, "c", guessed, "d", far));
        assertThat(check.estimate()).isEqualTo(estimate);
        assertThat(check.within()).containsExactly("a");
        assertThat(check.outside()).containsExactly("b");
        assertThat(check.agreement()).isEqualTo(EstimateCheck.Agreement.SOME_WITHIN);
        assertThat(thicknessCheck(asked, Map.of("a", same)).agreement()).isEqualTo(EstimateCheck.Agreement.ALL_WITHIN);
        assertThat(thicknessCheck(asked, Map.of("b", thick)).agreement())
                .isEqualTo(EstimateCheck.Agreement.NONE_WITHIN);
        assertThat(thicknessCheck(asked, Map.of("c", guessed, "d", far)).agreement())
                .isEqualTo(EstimateCheck.Agreement.NOBODY_KNOWS);
    }

    @Test
    void whatIsKnownIsNotChecked() {
        Cloth asked = Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 200);
        assertThat(Alike.to(asked, IN_MEMORY, 5).checks())
                .extracting(EstimateCheck::property)
                .doesNotContain(Property.WEIGHT_GSM, Property.PRICE_PER_METRE)
                .contains(Property.THICKNESS_MM, Property.AIR_PERMEABILITY_MM_S);
    }

    @Test
    void aHugeCatalogueIsSearchedInOnePass() {
        SplittableRandom random = new SplittableRandom(47);
        List<KeptCloth> many = new ArrayList<>();
        for (int i = 0; i < 100_000; i++) {
            many.add(kept("own-" + i, Samples.drawn(random)));
        }
        Cloth asked = Samples.drawn(random);
        List<Neighbour> nearest = Alike.to(asked, new ClothsInMemory(many), 5).neighbours();
        double fifth = nearest.get(4).kinship().distance();
        assertThat(many.stream().filter(k -> distance(asked, k.cloth()) < fifth).count())
                .isLessThan(5);
    }

    @Test
    void anEmptyCatalogueHasNoNeighbour() {
        Alike alike =
                Alike.to(Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 200), new ClothsInMemory(List.of()), 5);
        assertThat(alike.neighbours()).isEmpty();
        assertThat(alike.checks())
                .isNotEmpty()
                .allSatisfy(c -> assertThat(c.agreement()).isEqualTo(EstimateCheck.Agreement.NOBODY_KNOWS));
    }

    @Test
    void aLimitThatCannotBeIsRefused() {
        Cloth asked = Samples.cloth("flax 100", Weave.PLAIN, Finish.NONE, 200);
        for (int limit : List.of(-1, 0, 51)) {
            assertThatThrownBy(() -> Alike.to(asked, IN_MEMORY, limit)).isInstanceOf(Refused.class);
        }
    }

    private static EstimateCheck thicknessCheck(Cloth asked, Map<String, Cloth> catalogue) {
        List<KeptCloth> kept = catalogue.entrySet().stream()
                .map(entry -> kept(entry.getKey(), entry.getValue()))
                .toList();
        Optional<EstimateCheck> check = Alike.to(asked, new ClothsInMemory(kept), 10).checks().stream()
                .filter(c -> c.property() == Property.THICKNESS_MM)
                .findFirst();
        return check.orElseThrow();
    }

    private static List<String> ids(Alike alike) {
        return alike.neighbours().stream().map(n -> n.kept().id()).toList();
    }

    private static double distance(Cloth one, Cloth other) {
        return Kinship.between(one, other).distance();
    }
}
