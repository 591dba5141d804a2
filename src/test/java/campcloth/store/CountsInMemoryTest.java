package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.ClothTraits;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.WeightClass;
import campcloth.fibre.Fibre;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Counts in memory are those of the index by SQL, whatever was changed, on this instance or another, and by whatever rules. */
class CountsInMemoryTest {

    private static final long SEED = 4711;
    private static final List<String> SEASONS = List.of("SPRING", "SUMMER", "AUTUMN", "WINTER");
    private static final List<String> GRADES = List.of("A", "B", "C");

    /** Traits that cost nothing. */
    private record Drawn(String rules, int shift) implements ClothTraiter {

        @Override
        public ClothTraits of(Cloth cloth) {
            int number = shift + cloth.name().length();
            Set<String> seasons = new HashSet<>();
            for (int i = 0; i < number % 4; i++) {
                seasons.add(SEASONS.get((number + i) % 4));
            }
            return new ClothTraits(seasons, GRADES.get(number % 3));
        }
    }

    @Test
    void theyAreTheSameAfterEachOfManyChanges() {
        SplittableRandom random = new SplittableRandom(SEED);
        ClothDraw draw = new ClothDraw(SEED);
        List<String> ids = new ArrayList<>();
        Drawn rules = new Drawn("first", 0);
        try (IndexedDatabase a = new IndexedDatabase();
                IndexedDatabase b = new IndexedDatabase(a.database())) {
            ClothSnapshot snapshot = b.snapshot();
            IndexedTraits traits = b.traits(snapshot);
            a.index(rules).afterSingletonsInstantiated();
            for (int change = 0; change < 60; change++) {
                if (change == 40) {
                    rules = new Drawn("second", 1);
                    a.index(rules).afterSingletonsInstantiated();
                } else if (random.nextInt(4) == 0 && !ids.isEmpty()) {
                    a.remove(ids.get(random.nextInt(ids.size())));
                } else {
                    a.write(some(ids, draw, random));
                }
                if (random.nextBoolean()) {
                    a.index(rules).bringUpToDate();
                }
                b.index(rules).bringUpToDate();
                for (int i = 0; i < 5; i++) {
                    ClothSearch search = search(random);
                    IndexedTraits.Seen seen = traits.current();
                    CountsInMemory counts = CountsInMemory.of(search, seen.columns(), seen);
                    ClothFinder.Found found = b.found(search, 5);
                    String what = "seed " + SEED + ", change " + change + ": " + search;
                    assertThat(counts.total()).as(what).isEqualTo(found.total());
                    assertThat(counts.facets()).as(what).isEqualTo(found.facets());
                }
            }
            assertThat(ids).hasSizeGreaterThan(50);
        }
    }

    private static Map<String, Cloth> some(List<String> ids, ClothDraw draw, SplittableRandom random) {
        Map<String, Cloth> some = new LinkedHashMap<>();
        for (int i = 0; i < 1 + random.nextInt(6); i++) {
            String id = random.nextInt(3) == 0 && !ids.isEmpty()
                    ? ids.get(random.nextInt(ids.size()))
                    : "cloth-" + ids.size();
            if (!ids.contains(id)) {
                ids.add(id);
            }
            some.put(id, draw.cloth());
        }
        return some;
    }

    private static ClothSearch search(SplittableRandom random) {
        List<String> fibres =
                ShippedCatalogue.get().fibres().all().stream().map(Fibre::key).toList();
        return new ClothSearch(
                Optional.empty(),
                some(fibres, random),
                perhaps(random),
                perhaps(random),
                some(List.of(WeightClass.values()), random),
                some(SEASONS, random),
                some(GRADES, random),
                perhaps(random).map(gsm -> gsm / 10),
                perhaps(random).map(gsm -> gsm / 5),
                some(List.of(KeptCloth.Origin.values()), random));
    }

    private static Optional<Double> perhaps(SplittableRandom random) {
        return random.nextInt(4) == 0 ? Optional.of((double) random.nextInt(600)) : Optional.empty();
    }

    private static <T> Set<T> some(List<T> of, SplittableRandom random) {
        Set<T> chosen = new HashSet<>();
        while (random.nextInt(3) == 0) {
            chosen.add(of.get(random.nextInt(of.size())));
        }
        return chosen;
    }
}
