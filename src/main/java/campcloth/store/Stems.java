package campcloth.store;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The English stems of words, as PostgreSQL's dictionary has them: the catalogue is written in English. */
@Component
class Stems {

    private static final String STEMS = """
            select word, (ts_lexize('pg_catalog.english_stem', word))[1] as stem
            from unnest(cast(:words as text[])) as word""";

    private final JdbcClient sql;

    Stems(JdbcClient sql) {
        this.sql = sql;
    }

    /** The stem of each word; words that are no English content words are their own. */
    Map<String, String> of(Collection<String> words) {
        Map<String, String> stems = new HashMap<>();
        sql.sql(STEMS)
                .param("words", List.copyOf(words).toArray(String[]::new))
                .query((row, number) -> {
                    String word = row.getString("word");
                    String stem = row.getString("stem");
                    return stems.put(word, stem == null ? word : stem);
                })
                .list();
        return stems;
    }
}
