package campcloth.store;

import campcloth.advice.UsualTraits;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.WeightClass;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Run by hand ({@code mvn test -Dtest=SearchBenchmark -Dcloths=100000}): how long it takes to index so many invented cloths with their
 * real traits, and to answer searches with all facets, beside PostgreSQL's plain count of the table. Prints medians, ratios and which
 * indexes the plans of the pages use; asserts nothing.
 */
class SearchBenchmark {

    private static final int CLOTHS = Integer.getInteger("cloths", 100_000);
    private static final int RUNS = 9;

    private static final Map<String, ClothSearch> SEARCHES = new LinkedHashMap<>();

    static {
        SEARCHES.put("everything", ClothSearch.EVERYTHING);
        SEARCHES.put("a common word", words("herringbone"));
        SEARCHES.put("a rare word", words("marbelko"));
        SEARCHES.put("three words, the last begun", words("washed canvas marb"));
        SEARCHES.put("a rare word misspelt", words("marbllko"));
        SEARCHES.put("three words, one misspelt", words("washed canvs of marbelko"));
        SEARCHES.put(
                "a fibre, a season, a class",
                new ClothSearch(
                        Optional.empty(),
                        Set.of("wool"),
                        Optional.empty(),
                        Optional.empty(),
                        Set.of(WeightClass.HEAVY),
                        Set.of("WINTER"),
                        Set.of(),
                        Optional.empty(),
                        Optional.empty()));
        SEARCHES.put(
                "a narrow span of price",
                new ClothSearch(
                        Optional.empty(),
                        Set.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Set.of(),
                        Set.of(),
                        Set.of(),
                        Optional.of(12.0),
                        Optional.of(12.0)));
    }

    @Test
    void searchesAgainstAPlainCount() {
        ShippedCatalogue shipped = ShippedCatalogue.get();
        UsualTraits traits =
                new UsualTraits(new FireAdvice(new FireRules(shipped.fibres())), shipped.seasons(), shipped.fibres());
        try (IndexedDatabase database = new IndexedDatabase()) {
            ClothDraw draw = new ClothDraw(1);
            Map<String, Cloth> cloths = new LinkedHashMap<>();
            for (int i = 0; i < CLOTHS; i++) {
                cloths.put("c-" + i, draw.cloth());
            }
            database.write(cloths);
            double indexing = ms(database.index(traits)::afterSingletonsInstantiated);
            say("indexing %d cloths: %.1f s, %.0f us a cloth%n", CLOTHS, indexing / 1000, 1000 * indexing / CLOTHS);
            database.sql().execute("vacuum analyze cloth_index");
            database.sql().execute("vacuum analyze cloth");
            double count = median(() -> database.sql().queryForList("select count(*) from cloth"));
            say("plain count of the table: %.1f ms%n", count);
            SEARCHES.forEach((name, search) -> {
                double time = median(() -> database.found(search, 50));
                ClothFinder.Found found = database.found(search, 50);
                say(
                        "%-30s %7d found%s: %.1f ms, %.1f counts; page uses %s%n",
                        name, found.total(), found.near() ? " nearly" : "", time, time / count, plan(database, search));
            });
        }
    }

    /** The indexes and scans in PostgreSQL's plan of the page. */
    private static List<String> plan(IndexedDatabase database, ClothSearch search) {
        return database.plan(search).stream()
                .filter(line -> line.contains("Scan"))
                .map(line -> line.replaceAll(
                                ".*?((Bitmap |Parallel |)(Index |Seq |Heap |Index Only )Scan[^(]*).*", "$1")
                        .strip())
                .toList();
    }

    private static double median(Runnable work) {
        double[] times = new double[RUNS];
        for (int i = -2; i < RUNS; i++) {
            double time = ms(work);
            if (i >= 0) {
                times[i] = time;
            }
        }
        Arrays.sort(times);
        return times[RUNS / 2];
    }

    private static double ms(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    private static ClothSearch words(String text) {
        return new ClothSearch(Optional.of(text), Set.of(), Optional.empty(), Optional.empty());
    }

    private static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
