package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.ClothFacets.Facet;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.SearchWords;
import campcloth.cloth.WeightClass;
import campcloth.event.Season;
import campcloth.fibre.Fibres;
import campcloth.fibre.LabelVocabulary;
import campcloth.fire.FireGrade;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The search over a real PostgreSQL against a search in memory, cloth by cloth. */
class ClothFinderTest extends FoundCloths {

    private static final int SEARCHES = 150;
    private static final int MOST = 500;

    @Autowired
    private ClothTraiter traiter;

    @Autowired
    private LabelVocabulary labels;

    @Autowired
    private Fibres fibres;

    @Autowired
    private Stems stems;

    @Test
    void everyCombinationFindsAndCountsWhatASearchInMemoryDoes() {
        SearchedInMemory memory = memory();
        SplittableRandom random = new SplittableRandom(SEED);
        int some = 0;
        for (int i = 0; i < SEARCHES; i++) {
            ClothSearch search = drawn(random);
            Cloths.Page found = cloths.page(search, 0, MOST);
            Set<String> expected = memory.ids(search);
            String what = "seed " + SEED + ", search " + i + ": " + search;
            if (!found.nearMatches()) {
                assertThat(expected).as(what).containsAll(ids(found.cloths()));
                assertThat(found.cloths()).as(what).hasSize(Math.min(MOST, expected.size()));
                assertThat(found.total()).as(what).isEqualTo(expected.size());
                assertThat(found.facets()).as(what).isEqualTo(memory.facets(search));
            }
            assertThat(ids(cloths.matching(search))).as(what).isEqualTo(expected);
            some += expected.isEmpty() ? 0 : 1;
        }
        System.out.printf("%d of %d searches found something%n", some, SEARCHES);
        assertThat(some).isGreaterThan(SEARCHES / 4);
    }

    @Test
    void whoPutAClothThereNarrowsWhatIsFound() {
        KeptCloth own = cloths.add(shipped().get(0).cloth());
        List<KeptCloth> theirs = cloths.matching(from(KeptCloth.Origin.OWN));
        assertThat(ids(theirs)).contains(own.id());
        assertThat(theirs).allMatch(kept -> kept.origin() == KeptCloth.Origin.OWN);
        assertThat(ids(cloths.matching(from(KeptCloth.Origin.CATALOGUE)))).isEqualTo(ids(shipped()));
        cloths.remove(own.id(), own.version());
    }

    @Test
    void anExclusiveFacetAddsUpToWhatIsFoundWithoutIt() {
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int i = 0; i < SEARCHES / 5; i++) {
            ClothSearch search = drawn(random);
            Cloths.Page found = cloths.page(search, 0, 1);
            ClothSearch anyClass = with(search, Set.of(), search.fireGrades());
            ClothSearch anyGrade = with(search, search.weightClasses(), Set.of());
            assertThat(sum(found.facets().weightClass()))
                    .as("%s", search)
                    .isEqualTo(cloths.page(anyClass, 0, 1).total());
            assertThat(sum(found.facets().fireGrade()))
                    .as("%s", search)
                    .isEqualTo(cloths.page(anyGrade, 0, 1).total());
        }
    }

    @Test
    void pagesTogetherHoldEachClothOnce() {
        ClothSearch linen = words("linen");
        long total = cloths.page(linen, 0, 1).total();
        List<String> ids = new ArrayList<>();
        for (int page = 0; page * 7L < total; page++) {
            cloths.page(linen, page, 7).cloths().forEach(kept -> ids.add(kept.id()));
        }
        assertThat(ids).doesNotHaveDuplicates().hasSize((int) total);
        assertThat(cloths.page(linen, 1_000_000, 500).cloths()).isEmpty();
    }

    private static ClothSearch from(KeptCloth.Origin origin) {
        return new ClothSearch(
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                Set.of(),
                Set.of(),
                Set.of(),
                Optional.empty(),
                Optional.empty(),
                Set.of(origin));
    }

    private ClothSearch drawn(SplittableRandom random) {
        List<String> names = shipped().stream().map(kept -> kept.cloth().name()).toList();
        return new ClothSearch(
                random.nextInt(3) > 0 ? Optional.empty() : Optional.of(text(names, random)),
                some(fibres.all().stream().limit(8).map(f -> f.key()).toList(), 4, random),
                perhaps(random, 50, 350),
                perhaps(random, 200, 700),
                some(List.of(WeightClass.values()), 2, random),
                some(Arrays.stream(Season.values()).map(Enum::name).toList(), 3, random),
                some(Arrays.stream(FireGrade.values()).map(Enum::name).toList(), 2, random),
                perhaps(random, 1, 30),
                perhaps(random, 10, 100),
                some(List.of(KeptCloth.Origin.values()), 4, random));
    }

    private static String text(List<String> names, SplittableRandom random) {
        List<String> words = SearchWords.of(names.get(random.nextInt(names.size())));
        String word = words.get(random.nextInt(words.size()));
        return switch (random.nextInt(4)) {
            case 0 -> word;
            case 1 -> word.substring(0, 1 + random.nextInt(word.length()));
            case 2 -> word + "s";
            default -> words.get(0) + " " + word;
        };
    }

    private static Optional<Double> perhaps(SplittableRandom random, int least, int most) {
        return random.nextInt(4) == 0 ? Optional.of((double) random.nextInt(least, most)) : Optional.empty();
    }

    private static <T> Set<T> some(List<T> of, int oneIn, SplittableRandom random) {
        Set<T> chosen = new HashSet<>();
        if (random.nextInt(oneIn) == 0) {
            for (int i = 0; i <= random.nextInt(3); i++) {
                chosen.add(of.get(random.nextInt(of.size())));
            }
        }
        return chosen;
    }

    private static ClothSearch with(ClothSearch search, Set<WeightClass> classes, Set<String> grades) {
        return new ClothSearch(
                search.text(),
                search.fibres(),
                search.minWeightGsm(),
                search.maxWeightGsm(),
                classes,
                search.seasons(),
                grades,
                search.minPricePerMetre(),
                search.maxPricePerMetre(),
                search.origins());
    }

    private SearchedInMemory memory() {
        return new SearchedInMemory(cloths.matching(ClothSearch.EVERYTHING), traiter, labels, stems);
    }

    private static long sum(Facet facet) {
        return facet.values().stream().mapToLong(count -> count.count()).sum() + facet.without();
    }
}
