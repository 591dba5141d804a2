package campcloth.store;

import campcloth.advice.UsualTraits;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.Completeness;
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
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Run by hand ({@code mvn test -Dtest=SearchBenchmark -Dcloths=100000,1000000}): how long it takes to index invented cloths with their
 * real traits, to answer searches with all facets as the service does, and to tell how much is known of them all, beside PostgreSQL's plain count of the
 * table in the same run. Prints medians, ratios and which indexes the plans of the pages use; asserts nothing.
 *
 * <p>At most {@value #DRAWN} cloths are drawn and indexed by the program. Of more, the others are these again with ids of their own and
 * another made-up place in their names, so that a rare word stays rare.
 */
class SearchBenchmark {

    private static final int DRAWN = 100_000;
    private static final int RUNS = 9;
    private static final int WORTH_MEASURING = 10;
    private static final int SIZE = 50;

    /** Place and all, as it stands in the names and the index. */
    private static final String COPY = """
            insert into cloth (id, version, tick, origin, body)
            select id || '-' || ?, version, tick, origin, jsonb_set(body, '{name}', to_jsonb((body ->> 'name') || ?))
            from cloth where id not like '%-%-%'""";

    private static final String COPY_INDEXED = """
            insert into cloth_index (cloth_id, name, near, words, fibres, weight_gsm, weight_class, seasons, fire_grade, price_per_metre)
            select cloth_id || '-' || ?, name || ?, replace(near, place, place || ?),
                cast(replace(cast(words as text), chr(39) || place || chr(39), chr(39) || place || ? || chr(39)) as tsvector),
                fibres, weight_gsm, weight_class, seasons, fire_grade, price_per_metre
            from cloth_index, lateral (select substring(name from '[^ ]+$') as place) last where cloth_id not like '%-%-%'""";

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

    @ParameterizedTest
    @MethodSource("sizes")
    void searchesAgainstAPlainCount(int cloths) {
        ShippedCatalogue shipped = ShippedCatalogue.get();
        UsualTraits traits =
                new UsualTraits(new FireAdvice(new FireRules(shipped.fibres())), shipped.seasons(), shipped.fibres());
        try (IndexedDatabase database = new IndexedDatabase()) {
            filled(database, traits, cloths);
            measured(database, traits, cloths);
        }
    }

    private static void measured(IndexedDatabase database, UsualTraits traits, int cloths) {
        double count = median(() -> database.sql().queryForList("select count(*) from cloth"));
        say("%n%d cloths; plain count of the table: %.1f ms%n", cloths, count);
        Cloths all = database.cloths(database.snapshot(), traits);
        double columns = ms(() -> all.columns(ClothSearch.EVERYTHING));
        double first = ms(() -> all.page(ClothSearch.EVERYTHING, 0, SIZE));
        say("into memory %.1f s, the traits in the index %.1f s%n", columns / 1000, first / 1000);
        SEARCHES.forEach((name, search) -> {
            Runnable page =
                    search.text().isPresent() ? () -> database.found(search, SIZE) : () -> all.page(search, 0, SIZE);
            double time = median(page);
            ClothFinder.Found found = database.found(search, 1);
            say(
                    "%-30s %7d found%s: %.1f ms, %.1f counts; page uses %s%n",
                    name, found.total(), found.near() ? " nearly" : "", time, time / count, plan(database, search));
        });
        double known = median(() -> Completeness.of(all, WORTH_MEASURING));
        say("how much is known %.1f ms, %.1f counts%n", known, known / count);
    }

    static IntStream sizes() {
        return Arrays.stream(System.getProperty("cloths", "" + DRAWN).split(","))
                .mapToInt(Integer::parseInt);
    }

    private static void filled(IndexedDatabase database, UsualTraits traits, int count) {
        ClothDraw draw = new ClothDraw(1);
        Map<String, Cloth> cloths = new LinkedHashMap<>();
        int drawn = Math.min(count, DRAWN);
        for (int i = 0; i < drawn; i++) {
            cloths.put("c-" + i, draw.cloth());
        }
        database.write(cloths);
        double indexing = ms(database.index(traits)::afterSingletonsInstantiated);
        say("indexing %d cloths: %.1f s, %.0f us a cloth%n", drawn, indexing / 1000, 1000 * indexing / drawn);
        if (count > DRAWN) {
            database.writing(sql -> copied(sql, count));
        }
        database.sql().execute("vacuum analyze cloth_index");
        database.sql().execute("vacuum analyze cloth");
    }

    /** Indexes are made at the end, which takes less time than keeping them up. */
    private static void copied(JdbcTemplate sql, int count) {
        Map<String, String> indexes = new LinkedHashMap<>();
        sql.query(
                "select indexname, indexdef from pg_indexes where tablename = 'cloth_index' and indexname not like '%pkey'",
                row -> {
                    indexes.put(row.getString("indexname"), row.getString("indexdef"));
                });
        indexes.keySet().forEach(name -> sql.execute("drop index " + name));
        for (int copy = 1; copy * DRAWN < count; copy++) {
            String number = Integer.toString(copy);
            String letter = Character.toString('a' + copy);
            sql.update(COPY, number, letter);
            sql.update(COPY_INDEXED, number, letter, letter, letter);
        }
        indexes.values().forEach(sql::execute);
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
