package campcloth.store;

import campcloth.cloth.ClothFacets;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.SearchWords;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * Looks for cloths in the index as it stands. Words are looked for as they are: all in one cloth. Only where no cloth of all
 * that the asker sees has all of them, near names are. Which of the two it is does not hang on the rest of the search, so that narrowing never
 * turns a search into another.
 */
@Component
class ClothFinder {

    /**
     * Of the trigrams of what is sought, the share that has to stand together in a name: project choice. The last is the least; of a great
     * many cloths as many as are wanted are found by a greater share, which takes far less time.
     */
    private static final List<String> NEAR = List.of("0.7", "0.55", "0.4");

    /** Nobody looks through more names that are only alike: project choice. */
    static final int NEAREST = 200;

    /** Trigrams of the words in the name and the names of the fibres. */
    private static final String BY_NEARNESS = """
            select cloth_id from cloth_index where near %%> cast(:said as text) and %s
            order by word_similarity(:said, near) desc, similarity(name, :said) desc, name, cloth_id limit """ + " " + NEAREST;

    /** A plan for all that match, which goes by the index: one for the first that does might look at every row. */
    private static final String ANY = """
            with hit as materialized (select from cloth_index where %s and %s)
            select exists (select from hit)""";

    /**
     * What was found.
     *
     * @param near whether no cloth has all the words, and these are only named much alike
     */
    record Found(List<String> ids, long total, boolean near, ClothFacets facets) {}

    /** The parts of a search in SQL. */
    record Asked(ClothReading reading, ClothWhere where, Map<String, Object> params) {

        String ids() {
            return "select cloth_id from cloth_index where "
                    + String.join(" and ", reading.condition(), where.uncounted(), where.facetsBut());
        }

        /** The same, a page of it. */
        String page() {
            return ids() + " order by " + reading.order() + " limit :size offset :before";
        }
    }

    private static final int IDS_AT_ONCE = 5_000;

    private final JdbcClient sql;
    private final Stems stems;
    private final FibreNames names;

    ClothFinder(JdbcClient sql, Stems stems, FibreNames names) {
        this.sql = sql;
        this.stems = stems;
        this.names = names;
    }

    /**
     * What is made of the ids of all cloths of those listed, a condition, that have all the words and match the rest, however many
     * they are: they go by one after the other.
     */
    @Transactional(readOnly = true)
    public <T> T matching(ClothSearch search, String listed, Function<Stream<String>, T> made) {
        Asked asked = asked(search, listed);
        if (asked.reading() == ClothReading.NEARLY) {
            return made.apply(Stream.empty());
        }
        try (Stream<String> ids =
                sql.sql(asked.ids()).withFetchSize(IDS_AT_ONCE).params(asked.params()).query(String.class).stream()) {
            return made.apply(ids);
        }
    }

    /** A page of them, the best first; near names where no cloth has all the words. */
    @Transactional(readOnly = true)
    public Found page(ClothSearch search, String listed, int page, int size) {
        Asked asked = orNearest(asked(search, listed), listed);
        ClothCounts counts = new ClothCounts();
        sql.sql(ClothCounts.sql(asked.reading(), asked.where()))
                .params(asked.params())
                .query(counts);
        return new Found(
                ids(asked, page, size),
                counts.total(),
                asked.reading() == ClothReading.NEARLY && counts.total() > 0,
                counts.facets());
    }

    /** The same of a search without words, not counted. */
    @Transactional(readOnly = true)
    public List<String> page(ClothSearch search, String listed, int page, int size, CountsInMemory counts) {
        return (long) page * size < counts.total() ? ids(asked(search, listed), page, size) : List.of();
    }

    private List<String> ids(Asked asked, int page, int size) {
        return sql.sql(asked.page())
                .params(asked.params())
                .param("size", size)
                .param("before", (long) page * size)
                .query(String.class)
                .list();
    }

    /** The same, where only near names are found with the nearest of them. */
    Asked orNearest(Asked asked, String listed) {
        if (asked.reading() != ClothReading.NEARLY) {
            return asked;
        }
        List<String> nearest = List.of();
        for (int i = 0; i < NEAR.size() && nearest.size() < NEAREST; i++) {
            sql.sql("select set_config('pg_trgm.word_similarity_threshold', ?, true)")
                    .param(NEAR.get(i))
                    .query(String.class)
                    .single();
            nearest = sql.sql(BY_NEARNESS.formatted(listed))
                    .params(asked.params())
                    .query(String.class)
                    .list();
        }
        Map<String, Object> params = new HashMap<>(asked.params());
        params.put("nearest", nearest.toArray(String[]::new));
        return new Asked(asked.reading(), asked.where(), params);
    }

    Asked asked(ClothSearch search, String listed) {
        ClothWhere where = ClothWhere.of(search, listed);
        Map<String, Object> params = new HashMap<>(where.params());
        if (search.text().isEmpty()) {
            return new Asked(ClothReading.EVERY, where, params);
        }
        List<String> words = search.text().map(SearchWords::of).orElse(List.of());
        if (words.isEmpty()) {
            return new Asked(ClothReading.NONE, where, params);
        }
        Map<String, String> stem = stems.of(Set.copyOf(words));
        params.put("query", ClothWords.query(words, word -> stem.getOrDefault(word, word), names));
        params.put("said", String.join(" ", words));
        boolean found = sql.sql(ANY.formatted(ClothReading.ALL_WORDS.condition(), listed))
                .params(params)
                .query(Boolean.class)
                .single();
        return new Asked(found ? ClothReading.ALL_WORDS : ClothReading.NEARLY, where, params);
    }
}
