package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Property;
import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import campcloth.store.postgres.StandbyForTests;
import java.sql.Connection;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/**
 * A hot standby is read where it has come as far as is asked for, and nowhere else: a real one, that lags, is away, breaks off, or becomes
 * the first itself.
 */
class ClothReplicaTest {

    private static final List<String> IDS =
            List.copyOf(ShippedCatalogue.get().cloths().keySet());
    private static final String ID = IDS.get(0);

    private static CopiedDatabase copied;
    private static StandbyForTests both;
    private static IndexedDatabase first;

    /** How often rows were read from the first. */
    private final AtomicInteger readAtFirst = new AtomicInteger();

    @BeforeAll
    static void start() throws Exception {
        copied = new CopiedDatabase();
        both = copied.both();
        first = copied.first();
    }

    @AfterAll
    static void stop() throws Exception {
        copied.close();
    }

    @BeforeEach
    void caughtUp() throws Exception {
        copied.resumed();
        both.second().catchUpWith(both.first());
    }

    @Test
    void aCopyThatHasComeAsFarIsRead() throws Exception {
        try (ClothReplica copy = CopiedDatabase.copy(both.second())) {
            ClothSnapshot snapshot = atFirst(copy);
            assertThat(IndexedDatabase.all(snapshot))
                    .isEqualTo(IndexedDatabase.all(first.snapshot()))
                    .hasSize(IDS.size());
            first.write(Map.of(ID, weighing(210)));
            both.second().catchUpWith(both.first());
            assertThat(weight(snapshot, ID)).isEqualTo(210);
            assertThat(readAtFirst).as("the copy had all of it").hasValue(0);
        }
    }

    @Test
    void aCopyThatIsBehindIsNotReadUntilItHasCaughtUp() throws Exception {
        try (ClothReplica copy = CopiedDatabase.copy(both.second())) {
            ClothSnapshot snapshot = atFirst(copy);
            snapshot.bringUpToDate();
            copied.paused();
            for (int change = 1; change <= 5; change++) {
                first.write(Map.of(ID, weighing(300 + change)));
                assertThat(weight(snapshot, ID)).isEqualTo(300 + change);
                assertThat(readAtFirst).hasValue(change);
            }
            copied.resumed();
            both.second().catchUpWith(both.first());
            first.write(Map.of(ID, weighing(310)));
            both.second().catchUpWith(both.first());
            assertThat(weight(snapshot, ID)).isEqualTo(310);
            assertThat(readAtFirst).as("it had caught up").hasValue(5);
        }
    }

    @Test
    void nothingIsMissedWhileTheCopyLagsNowMoreAndNowLess() throws Exception {
        SplittableRandom random = new SplittableRandom(6);
        int atSecond = 0;
        try (ClothReplica copy = CopiedDatabase.copy(both.second())) {
            ClothSnapshot snapshot = atFirst(copy);
            ClothSnapshot byItself = first.snapshot();
            for (int change = 0; change < 60; change++) {
                String id = IDS.get(random.nextInt(IDS.size()));
                int gsm = 100 + change;
                switch (random.nextInt(6)) {
                    case 0 -> copied.paused();
                    case 1 -> copied.resumed();
                    case 2 -> first.remove(id);
                    default -> first.write(Map.of(id, weighing(gsm)));
                }
                int before = readAtFirst.get();
                assertThat(snapshot.byIds(List.of(id))).as("change %d", change).isEqualTo(byItself.byIds(List.of(id)));
                atSecond += readAtFirst.get() == before ? 1 : 0;
            }
            assertThat(IndexedDatabase.all(snapshot)).isEqualTo(IndexedDatabase.all(first.snapshot()));
            assertThat(atSecond).as("times that nothing was asked of the first").isPositive();
            assertThat(readAtFirst).hasPositiveValue();
        } finally {
            copied.resumed();
            first.write(ShippedCatalogue.get().cloths());
        }
    }

    @Test
    void aCopyThatIsGoneHidesNothingAndIsAskedAgainOnceItIsBack() throws Exception {
        ClothReplica.Patience patience = new ClothReplica.Patience(Duration.ofSeconds(8), Duration.ofMinutes(1));
        try (ClothReplica copy = CopiedDatabase.copy(both.second(), patience)) {
            ClothSnapshot snapshot = atFirst(copy);
            snapshot.bringUpToDate();
            assertThat(readAtFirst).hasValue(0);
            both.second().stop();
            first.write(Map.of(ID, weighing(400)));
            long begun = System.nanoTime();
            assertThat(weight(snapshot, ID)).isEqualTo(400);
            assertThat(Duration.ofNanos(System.nanoTime() - begun))
                    .as("its patience, and a minute for a busy machine")
                    .isLessThan(patience.toConnect().plusMinutes(1));
            assertThat(readAtFirst).hasValue(1);
        } finally {
            both.second().start();
        }
        both.second().catchUpWith(both.first());
        try (ClothReplica again = CopiedDatabase.copy(both.second())) {
            assertThat(weight(atFirst(again), ID)).isEqualTo(400);
            assertThat(readAtFirst).hasValue(1);
        }
    }

    @Test
    void aCopyThatBreaksOffInTheMiddleHidesNothing() throws Exception {
        try (ClothReplica copy = CopiedDatabase.copy(both.second());
                Connection locking = both.first().database().connect();
                Statement statement = locking.createStatement()) {
            ClothSnapshot snapshot = atFirst(copy);
            locking.setAutoCommit(false);
            statement.execute("lock table cloth in access exclusive mode");
            both.first().ask("select pg_log_standby_snapshot()");
            String waiting = "from pg_stat_activity where wait_event_type = 'Lock' and usename = 'campcloth'";
            both.second()
                    .await(
                            "select count(*) from pg_locks where relation = 'cloth'::regclass and mode = 'AccessExclusiveLock'"
                                    + " and granted",
                            "1");
            CompletableFuture<Integer> reading = CompletableFuture.supplyAsync(
                    () -> IndexedDatabase.all(snapshot).size());
            both.second().await("select count(*) " + waiting, "1");
            both.second().ask("select pg_terminate_backend(pid) " + waiting);
            locking.rollback();
            assertThat(reading.get(3, TimeUnit.MINUTES)).isEqualTo(IDS.size());
            assertThat(readAtFirst).hasValue(1);
        }
    }

    @Test
    void aCopyThatHasBecomeADatabaseOfItsOwnIsNoCopyAnyMore() throws Exception {
        try (ClothReplica copy = CopiedDatabase.copy(both.second())) {
            ClothSnapshot snapshot = atFirst(copy);
            double before = weight(snapshot, ID);
            both.second().promote();
            try (IndexedDatabase second = new IndexedDatabase(both.second().database())) {
                first.write(Map.of(IDS.get(1), weighing(500)));
                second.write(Map.of(ID, weighing(510)));
                second.write(Map.of(ID, weighing(511)));
            }
            assertThat(weight(snapshot, ID)).isEqualTo(before);
            assertThat(weight(snapshot, IDS.get(1))).isEqualTo(500);
            assertThat(weight(atFirst(copy), ID)).isEqualTo(before);
        } finally {
            copied.anew();
        }
    }

    /**
     * The last change of the first never came to the standby that takes its place; there another change gets its tick. And the old first
     * that comes back as a copy still holds what was lost.
     */
    @Test
    void whereTheStandbyTakesThePlaceOfTheFirstWhatWasLostIsForgotten() throws Exception {
        try (ClothReplica nowhere = CopiedDatabase.copy(both.second(), ClothReplica.Patience.USUAL)) {
            DelegatingDataSource address = new DelegatingDataSource(CopiedDatabase.at(both.first()));
            ClothSnapshot snapshot = CopiedDatabase.snapshot(address, nowhere, () -> {});
            ClothSnapshot rarelyWhole = CopiedDatabase.snapshot(address, 10);
            double kept = weight(snapshot, ID);
            both.second().stop();
            first.write(Map.of(ID, weighing(600)));
            assertThat(weight(snapshot, ID)).isEqualTo(600);
            assertThat(weight(rarelyWhole, ID)).isEqualTo(600);
            both.first().stop();
            both.second().start();
            both.second().promote();
            try (IndexedDatabase second = new IndexedDatabase(both.second().database())) {
                second.write(Map.of(IDS.get(1), weighing(610)));
                address.setTargetDataSource(CopiedDatabase.at(both.second()));
                assertThat(weight(snapshot, IDS.get(1))).isEqualTo(610);
                assertThat(weight(snapshot, ID)).as("the change was lost").isEqualTo(kept);
                assertThat(weight(rarelyWhole, ID)).isEqualTo(kept);
                both.first().follow(both.second());
                both.first().start();
                ClothClock lost = ClothClock.now(new JdbcTemplate(CopiedDatabase.at(both.first())));
                ClothClock now = ClothClock.now(new JdbcTemplate(address));
                assertThat(lost).isEqualTo(new ClothClock(now.tick(), now.timeline() - 1, true));
                try (ClothReplica astray = CopiedDatabase.copy(both.first())) {
                    assertThat(weight(CopiedDatabase.snapshot(address, astray, () -> {}), ID))
                            .isEqualTo(kept);
                }
            }
        } finally {
            both.second().stop();
            copied.anew();
        }
    }

    private ClothSnapshot atFirst(ClothReplica copy) {
        return CopiedDatabase.snapshot(CopiedDatabase.at(both.first()), copy, readAtFirst::incrementAndGet);
    }

    private static Cloth weighing(double gsm) {
        return Objects.requireNonNull(ShippedCatalogue.get().cloths().get(ID))
                .with(Property.WEIGHT_GSM, Figure.exact(gsm, Basis.MEASURED, "own scales"));
    }

    private static double weight(ClothSnapshot snapshot, String id) {
        return snapshot.byIds(List.of(id))
                .get(0)
                .cloth()
                .figure(Property.WEIGHT_GSM)
                .orElseThrow()
                .value();
    }
}
