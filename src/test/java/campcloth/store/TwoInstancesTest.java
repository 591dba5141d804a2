package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.advice.Adviser;
import campcloth.advice.Candidate;
import campcloth.advice.Judged;
import campcloth.advice.Question;
import campcloth.advice.Shortlist;
import campcloth.advice.UsualTraits;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothInNumbers;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.Cloths;
import campcloth.cloth.ClothsInMemory;
import campcloth.cloth.Completeness;
import campcloth.cloth.Fit;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Layer;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.cloth.Wear;
import campcloth.event.Event;
import campcloth.event.Season;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;

/** Two instances of the program over one database: what one changes, the other knows. */
class TwoInstancesTest {

    private static final int CHANGES = 500;

    /** On a machine that is busy with other tests one edit of many may take longer than a second, but not until somebody looks. */
    private static final Duration SOONER_THAN_ANY_LOOK = ClothWatch.AT_LEAST_EVERY.dividedBy(3);

    /** Fewer than there are, so that the others are read when they are asked for. */
    private static final int KEPT_WHOLE = 40;

    private final ShippedCatalogue shipped = ShippedCatalogue.get();
    private final FireAdvice fire = new FireAdvice(new FireRules(shipped.fibres()));
    private final ClothTraiter traits = new UsualTraits(fire, shipped.seasons(), shipped.fibres());

    @Test
    void whatIsEditedOnOneRanksByItsNewFiguresOnTheOtherWithinASecondThoughNobodyAsks() throws Exception {
        try (IndexedDatabase a = new IndexedDatabase();
                IndexedDatabase b = new IndexedDatabase(a.database())) {
            a.write(shipped.cloths());
            ClothSnapshot atB = b.snapshot();
            try (ClothWatch watch = b.watch(atB, ClothWatch.AT_LEAST_EVERY)) {
                watch.start();
                await(Duration.ofSeconds(30), () -> atB.tickInMemory() == newest(a));
                long[] nanos = new long[20];
                for (int change = 0; change < nanos.length; change++) {
                    Cloth cloth = edited(change);
                    a.write(Map.of(anId(), cloth));
                    long tick = newest(a);
                    long start = System.nanoTime();
                    await(SOONER_THAN_ANY_LOOK, () -> atB.tickInMemory() >= tick);
                    nanos[change] = System.nanoTime() - start;
                    assertThat(cloth(atB)).isEqualTo(cloth);
                    assertThat(score(b, atB)).isEqualTo(score(cloth));
                }
                Arrays.sort(nanos);
                System.out.printf(
                        "an edit on one instance was in the memory of the other after %d ms at most, %d ms by the median%n",
                        nanos[nanos.length - 1] / 1_000_000, nanos[nanos.length / 2] / 1_000_000);
                assertThat(Duration.ofNanos(nanos[nanos.length / 2])).isLessThan(Duration.ofSeconds(1));
            }
        }
    }

    @Test
    void nothingIsMissedWhereTheChannelIsCutAgainAndAgainAndNothingIsSaidOnIt() throws Exception {
        try (IndexedDatabase a = new IndexedDatabase();
                IndexedDatabase b = new IndexedDatabase(a.database())) {
            a.write(shipped.cloths());
            a.sql().execute("alter table cloth_clock disable trigger cloth_clock_moved");
            ClothSnapshot atA = a.snapshot();
            ClothSnapshot atB = b.snapshot(KEPT_WHOLE);
            CountDownLatch done = new CountDownLatch(1);
            Thread cutter = new Thread(() -> cutAgainAndAgain(a, done));
            try (ClothWatch watch = b.watch(atB, Duration.ofSeconds(2))) {
                watch.start();
                cutter.start();
                changeAtRandom(a, b, atA, atB, 2026);
                done.countDown();
                cutter.join();
                await(Duration.ofSeconds(60), () -> atB.tickInMemory() == newest(a));
            } finally {
                done.countDown();
            }
            assertThat(ClothWatch.AT_LEAST_EVERY).isLessThanOrEqualTo(Duration.ofSeconds(30));
            Map<String, KeptCloth> inTable = all(a.snapshot());
            assertThat(all(atB)).isEqualTo(inTable);
            assertThat(all(atA)).isEqualTo(inTable);
            assertThat(numbers(atB.columns())).isEqualTo(numbers(inTable));
            assertThat(atB.columns().cloths()).isEqualTo(inTable.size());
            assertThat(known(b.cloths(atB, traits))).isEqualTo(known(new ClothsInMemory(inTable.values())));
        }
    }

    @Test
    void whatIsTakenBackIsSeenByNobodyElseAndHidesNothing() {
        try (IndexedDatabase a = new IndexedDatabase()) {
            a.write(shipped.cloths());
            ClothSnapshot snapshot = a.snapshot();
            snapshot.bringUpToDate();
            assertThatThrownBy(() -> a.writing(sql -> {
                        a.write(Map.of(anId(), edited(1)));
                        assertThat(cloth(snapshot)).isEqualTo(edited(1));
                        assertThat(snapshot.columns().cloths())
                                .isEqualTo(shipped.cloths().size());
                        throw new IllegalStateException("taken back");
                    }))
                    .hasMessage("taken back");
            assertThat(cloth(snapshot)).isEqualTo(shipped.cloths().get(anId()));
            a.write(Map.of(anId(), edited(2)));
            assertThat(cloth(snapshot)).isEqualTo(edited(2));
        }
    }

    private Cloth cloth(ClothSnapshot snapshot) {
        return snapshot.byIds(List.of(anId())).get(0).cloth();
    }

    private void changeAtRandom(IndexedDatabase a, IndexedDatabase b, ClothSnapshot atA, ClothSnapshot atB, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        ClothDraw draw = new ClothDraw(seed);
        List<String> ids = new ArrayList<>(shipped.cloths().keySet());
        for (int change = 0; change < CHANGES; change++) {
            IndexedDatabase writer = random.nextBoolean() ? a : b;
            String id = ids.get(random.nextInt(ids.size()));
            switch (random.nextInt(4)) {
                case 0 -> writer.remove(id);
                case 1 -> writer.write(Map.of(id, draw.cloth()));
                case 2 -> {
                    ids.add("added-" + change);
                    writer.write(Map.of("added-" + change, draw.cloth()));
                }
                default -> {
                    Map<String, Cloth> some = new LinkedHashMap<>();
                    for (int i = 0; i < 5; i++) {
                        some.put(ids.get(random.nextInt(ids.size())), draw.cloth());
                    }
                    writer.write(some);
                }
            }
            if (random.nextInt(10) == 0) {
                assertThat(atB.byIds(List.of(id))).as("change %d", change).isEqualTo(atA.byIds(List.of(id)));
            }
        }
    }

    private static void cutAgainAndAgain(IndexedDatabase a, CountDownLatch done) {
        try {
            while (!done.await(150, TimeUnit.MILLISECONDS)) {
                a.sql()
                        .query(
                                "select pg_terminate_backend(pid) from pg_stat_activity where application_name = ?"
                                        + " and datname = current_database()",
                                row -> {},
                                ClothWatch.NAME);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private static Map<String, KeptCloth> all(ClothSnapshot snapshot) {
        Map<String, KeptCloth> all = new TreeMap<>();
        snapshot.byIds(snapshot.columns().ids()).forEach(kept -> all.put(kept.id(), kept));
        return all;
    }

    private static Map<String, ClothInNumbers> numbers(Map<String, KeptCloth> cloths) {
        Map<String, ClothInNumbers> numbers = new TreeMap<>();
        cloths.forEach((id, kept) -> numbers.put(id, ClothInNumbers.of(kept.cloth())));
        return numbers;
    }

    private static Map<String, ClothInNumbers> numbers(Columns columns) {
        Map<String, ClothInNumbers> numbers = new TreeMap<>();
        for (int row = 0; row < columns.rows(); row++) {
            if (columns.holds(row)) {
                numbers.put(
                        columns.id(row),
                        new ClothInNumbers(
                                columns.makeNumbered(columns.make(row)),
                                columns.weightGsm(row),
                                columns.leastGsm(row),
                                columns.massIsEstimated(row),
                                columns.thicknessMm(row),
                                columns.permeabilityMmS(row),
                                columns.vapourResistanceM2PaW(row),
                                columns.coarseEndsPercent(row),
                                columns.bastRoughness(row),
                                columns.thicknessIsKnown(row),
                                columns.permeabilityIsKnown(row)));
            }
        }
        return numbers;
    }

    /** All that is told of how much is known. */
    private static List<Object> known(Cloths cloths) {
        Completeness completeness = Completeness.of(cloths, 50);
        List<Object> told = new ArrayList<>(completeness.worthMeasuring());
        completeness.byOrigin().forEach((origin, tally) -> {
            told.add(origin);
            told.add(tally.cloths());
            for (Property property : Property.values()) {
                for (Basis basis : Basis.values()) {
                    told.add(tally.cloths(property, basis));
                }
            }
        });
        return told;
    }

    private String anId() {
        return shipped.cloths().keySet().iterator().next();
    }

    private Cloth edited(int change) {
        return Objects.requireNonNull(shipped.cloths().get(anId()))
                .with(Property.WEIGHT_GSM, Figure.exact(100 + 10 * change, Basis.MEASURED, "own scales"));
    }

    private double score(IndexedDatabase at, ClothSnapshot snapshot) {
        Shortlist shortlist = new Shortlist(new Adviser(fire), at.cloths(snapshot, traits));
        return shortlist.rank(question(), ClothSearch.EVERYTHING, 20).ranking().judged().stream()
                .filter(judged -> judged.candidate().id().equals(anId()))
                .mapToDouble(Judged::score)
                .findFirst()
                .orElseThrow();
    }

    private double score(Cloth cloth) {
        Question alone = question().of(List.of(new Candidate("it", cloth)));
        return new Adviser(fire).rank(alone).judged().get(0).score();
    }

    private Question question() {
        Event event = new Event(
                "Wendlow river camp",
                Season.AUTUMN,
                shipped.seasons().spells(Season.AUTUMN).stream().limit(2).toList(),
                List.of());
        return new Question(event, new Wear(true, Layer.OUTER, Fit.LOOSE, false, 65, 1.7), List.of());
    }

    private static long newest(IndexedDatabase at) {
        Long tick = at.sql().queryForObject("select tick from cloth_clock", Long.class);
        return tick == null ? -1 : tick;
    }

    private static void await(Duration most, Callable<Boolean> holds) {
        Awaitility.await()
                .pollInSameThread()
                .pollDelay(Duration.ZERO)
                .pollInterval(Duration.ofMillis(5))
                .atMost(most)
                .until(holds);
    }
}
