package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.advice.UsualTraits;
import campcloth.cloth.Cloth;
import campcloth.cloth.ClothInNumbers;
import campcloth.cloth.ClothTraiter;
import campcloth.cloth.Cloths;
import campcloth.cloth.ClothsInMemory;
import campcloth.cloth.Completeness;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Basis;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** Two instances of the program over one database: of all that either changes the other misses nothing. */
class TwoInstancesTest {

    private static final int CHANGES = 500;

    /** Fewer than there are, so that the others are read when they are asked for. */
    private static final int KEPT_WHOLE = 40;

    private final ShippedCatalogue shipped = ShippedCatalogue.get();
    private final ClothTraiter traits =
            new UsualTraits(new FireAdvice(new FireRules(shipped.fibres())), shipped.seasons(), shipped.fibres());

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
            try (ClothWatch watch = b.watch(atB::bringUpToDate, Duration.ofSeconds(2))) {
                watch.start();
                cutter.start();
                changeAtRandom(a, b, atA, atB, 2026);
                done.countDown();
                cutter.join();
                Awaited.until(() -> atB.tickInMemory() == a.newestTick());
            } finally {
                done.countDown();
            }
            assertThat(ClothWatch.AT_LEAST_EVERY).isLessThanOrEqualTo(Duration.ofSeconds(30));
            Map<String, KeptCloth> inTable = IndexedDatabase.all(a.snapshot());
            assertThat(IndexedDatabase.all(atB)).isEqualTo(inTable);
            assertThat(IndexedDatabase.all(atA)).isEqualTo(inTable);
            assertThat(numbers(atB.columns())).isEqualTo(numbers(inTable));
            assertThat(atB.columns().cloths()).isEqualTo(inTable.size());
            assertThat(known(b.cloths(atB, traits))).isEqualTo(known(new ClothsInMemory(inTable.values())));
        }
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
}
