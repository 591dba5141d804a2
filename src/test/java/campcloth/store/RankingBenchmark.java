package campcloth.store;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Question;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Wear;
import campcloth.event.Event;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.journey.WholeService;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;

/**
 * Run by hand ({@code mvn test -Dtest=RankingBenchmark}): how long it takes to rank the whole catalogue over four spells, with
 * every reason written, beside a SQL query over the same rows that sorts them by one weighted sum of four figures. Prints medians
 * and the ratio; asserts nothing.
 */
@WholeService
class RankingBenchmark {

    private static final int WARM_UP = 30;
    private static final int RUNS = 41;

    private static final String BY_ONE_SUM = """
            select id, body from cloth where removed_by is null
            order by 0.4 * coalesce(weight_gsm, 200) / 400 + 0.3 * coalesce(thickness_mm, 0.5)
                - 0.2 * coalesce(air_permeability_mm_s, 200) / 500
                + 0.1 * coalesce(vapour_resistance_m2pa_w, 3) / 10, id
            """;

    @Autowired
    private Adviser adviser;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Seasons seasons;

    @Autowired
    private JdbcTemplate sql;

    @Test
    void rankingTheWholeCatalogueOverFourSpellsAgainstOneSortedSum() {
        Event event = new Event(
                "Wendlow river camp",
                Season.AUTUMN,
                seasons.spells(Season.AUTUMN).stream().limit(4).toList(),
                List.of());
        Wear tunic = new Wear(true, Layer.OUTER, Fit.LOOSE, false, 65, 1.7);
        double[] ranking = new double[RUNS];
        double[] query = new double[RUNS];
        int judged = 0;
        int sorted = 0;
        for (int run = -WARM_UP; run < RUNS; run++) {
            long start = System.nanoTime();
            List<Candidate> candidates = cloths.matching(ClothSearch.EVERYTHING).stream()
                    .map(kept -> new Candidate(kept.id(), kept.cloth()))
                    .toList();
            judged = adviser.rank(new Question(event, tunic, candidates))
                    .judged()
                    .size();
            long between = System.nanoTime();
            sorted = sql.queryForList(BY_ONE_SUM).size();
            long end = System.nanoTime();
            if (run >= 0) {
                ranking[run] = (between - start) / 1e6;
                query[run] = (end - between) / 1e6;
            }
        }
        Arrays.sort(ranking);
        Arrays.sort(query);
        System.out.printf(
                Locale.ROOT,
                "ranking %d cloths over %d spells: median %.1f ms (%.1f..%.1f); sorting %d rows by one sum in SQL: median"
                        + " %.1f ms (%.1f..%.1f); ratio of medians %.1f; %.0f us a cloth%n",
                judged,
                event.spells().size(),
                ranking[RUNS / 2],
                ranking[0],
                ranking[RUNS - 1],
                sorted,
                query[RUNS / 2],
                query[0],
                query[RUNS - 1],
                ranking[RUNS / 2] / query[RUNS / 2],
                1000 * ranking[RUNS / 2] / judged);
    }
}
