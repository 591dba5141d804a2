package campcloth.store;

import campcloth.advice.Adviser;
import campcloth.advice.Question;
import campcloth.advice.Shortlist;
import campcloth.advice.UsualTraits;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.Wear;
import campcloth.event.Activity;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Run by hand ({@code mvn test -Dtest=RankingBenchmark -Dcloths=160,10000,1000000}): how long it takes to rank catalogues of
 * different sizes over six spells, beside a SQL query over the same rows that sorts them by one weighted sum of four figures:
 * wholly, as asked for the first page, and the first twenty alone. And how long the catalogue takes to be brought into memory, how
 * much of it that is, and what a change costs. Prints medians and ratios; asserts nothing. The cloths are invented: some
 * thousand makes, the figures of each cloth its own.
 */
class RankingBenchmark {

    private static final String SIZES = System.getProperty("cloths", "160,10000,1000000");
    private static final int MANY = 100_000;

    private static final String BY_ONE_SUM = """
            select id, body from cloth where removed_by is null
            order by 0.4 * coalesce(weight_gsm, 200) / 400 + 0.3 * coalesce(thickness_mm, 0.5)
                - 0.2 * coalesce(air_permeability_mm_s, 200) / 500
                + 0.1 * coalesce(vapour_resistance_m2pa_w, 3) / 10, id
            """;

    private final ShippedCatalogue shipped = ShippedCatalogue.get();
    private final FireAdvice fire = new FireAdvice(new FireRules(shipped.fibres()));
    private final Wear tunic = new Wear(true, Layer.OUTER, Fit.LOOSE, false, 65, 1.7);

    @Test
    void rankingBesideOneSortedSum() {
        say(
                "%d processors, heap at most %d MB%n",
                processors(), Runtime.getRuntime().maxMemory() >> 20);
        Arrays.stream(SIZES.split(",")).mapToInt(Integer::parseInt).forEach(this::measure);
    }

    private static int processors() {
        return Runtime.getRuntime().availableProcessors();
    }

    private void measure(int size) {
        long before = heapMb();
        try (IndexedDatabase database = new IndexedDatabase()) {
            say("%n%,d cloths: written in %.1f s%n", size, ms(() -> new ManyCloths(database).write(size)) / 1000);
            ClothSnapshot snapshot = database.snapshot();
            double building = ms(snapshot::bringUpToDate);
            say(
                    "  into memory in %.1f s (%.0f us a cloth), %d makes; heap after a collection %d MB, before %d MB%n",
                    building / 1000, 1000 * building / size, snapshot.columns().makes(), heapMb(), before);
            Shortlist shortlist = new Shortlist(new Adviser(fire), database.cloths(snapshot, traits()));
            for (Event event : events()) {
                rank(size, database, shortlist, event);
            }
            refresh(size, database, snapshot);
            say("  heap after a collection %d MB%n", heapMb());
        }
    }

    private UsualTraits traits() {
        return new UsualTraits(fire, shipped.seasons(), shipped.fibres());
    }

    private void rank(int size, IndexedDatabase database, Shortlist shortlist, Event event) {
        Question question = new Question(event, tunic, List.of());
        int runs = size >= MANY ? 7 : 21;
        double[] ranking = new double[runs];
        double[] twenty = new double[runs];
        long start = System.nanoTime();
        Shortlist.Ranked ranked = shortlist.rank(question, ClothSearch.EVERYTHING, 20);
        double first = (System.nanoTime() - start) / 1e6;
        for (int run = size >= MANY ? -2 : -15; run < runs; run++) {
            double took = ms(() -> shortlist.rank(question, ClothSearch.EVERYTHING, 20));
            if (run >= 0) {
                ranking[run] = took;
                twenty[run] = ms(() -> database.walk(BY_ONE_SUM + " limit 20"));
            }
        }
        double[] query = new double[size >= MANY ? 3 : runs];
        for (int run = 0; run < query.length; run++) {
            query[run] = ms(() -> database.walk(BY_ONE_SUM));
        }
        say(
                "  %s, %d spells: %d judged in full; ranked the first time in %.0f ms, then in %s; sorted in SQL in %s: ratio %.2f; the first 20 alone in %s:"
                        + " ratio %.2f%n",
                event.name(),
                event.spells().size(),
                ranked.judged(),
                first,
                told(ranking),
                told(query),
                median(ranking) / median(query),
                told(twenty),
                median(ranking) / median(twenty));
    }

    private static String told(double[] times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return String.format(
                Locale.ROOT, "%.0f ms (%.0f..%.0f)", sorted[sorted.length / 2], sorted[0], sorted[sorted.length - 1]);
    }

    private void refresh(int size, IndexedDatabase database, ClothSnapshot snapshot) {
        double[] one = new double[9];
        for (int run = 0; run < one.length; run++) {
            database.touch(1, run);
            one[run] = ms(snapshot::bringUpToDate);
        }
        database.touch(Math.min(size, 10_000), 77);
        double many = ms(snapshot::bringUpToDate);
        double nothing = ms(snapshot::bringUpToDate);
        say(
                "  brought up to date after one edit in %.1f ms, after %,d in %.0f ms, after none in %.1f ms%n",
                median(one), Math.min(size, 10_000), many, nothing);
    }

    /** By day and night, in sun and rain, at a fire under a rule of the house, and the same without any fire. */
    private List<Event> events() {
        List<Spell> spells = new ArrayList<>(shipped.seasons().spells(Season.AUTUMN).stream()
                .filter(spell -> spell.fireInUse().isEmpty())
                .limit(3)
                .toList());
        spells.add(new Spell("noon", 5, 27, 50, 1.5, Sun.FULL, Activity.WALKING, Optional.empty()));
        spells.add(new Spell("market", 5, 6, 80, 6, Sun.NONE, Activity.STANDING, Optional.empty()));
        List<Spell> mild = new ArrayList<>(spells);
        spells.add(new Spell(
                "fireside",
                3,
                12,
                75,
                1,
                Sun.NONE,
                Activity.SEATED,
                Optional.of(new OpenFire(FireRole.COOKING, Optional.of(1.0), Optional.empty()))));
        mild.add(new Spell("evening", 3, 12, 75, 1, Sun.NONE, Activity.SEATED, Optional.empty()));
        SafetyRule rule = RuleDraft.of(
                        SafetyRule.Authority.EVENT, "No synthetic fibres within three metres of open fire")
                .mostMeltable(0)
                .within(Optional.of(3.0))
                .rule();
        return List.of(
                new Event("Wendlow river camp with a fire", Season.AUTUMN, spells, List.of(rule)),
                new Event("Wendlow river camp without", Season.AUTUMN, mild, List.of()));
    }

    private static double median(double[] times) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static double ms(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    private static long heapMb() {
        System.gc();
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) >> 20;
    }

    private static void say(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
    }
}
