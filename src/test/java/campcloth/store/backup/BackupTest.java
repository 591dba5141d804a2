package campcloth.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import campcloth.store.postgres.PostgresForTests;
import java.io.OutputStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a backup holds comes back whole. */
class BackupTest {

    private final TwoDatabases two;

    BackupTest(@TempDir Path folder) {
        this.two = new TwoDatabases(folder);
    }

    @Test
    void whatPeopleKeptComesBackAsItWas() throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        two.fill(8);
        two.migrate(TwoDatabases.OURS, "latest");
        Path file = two.backup();
        String said = two.restore(file, TwoDatabases.OURS);
        assertThat(said).contains("are back");
        assertThat(digests(two.to)).isEqualTo(digests(two.from)).containsKeys("cloth", "errand", "cloth_swatch");
        assertThat(TwoDatabases.texts(two.to, "select name || '/' || weight_gsm::text from cloth"))
                .containsExactly("Remnant from the bin/210");
        assertThat(TwoDatabases.texts(
                        two.to, "select conname from pg_constraint where contype = 'f' and condeferrable"))
                .isEmpty();
        assertThat(TwoDatabases.migrate(TwoDatabases.OURS, "latest", two.to))
                .as("migrations left to make")
                .isZero();
    }

    @Test
    void aBackupOfTheEighthSchemaEndsAtTheNewest() throws Exception {
        two.migrate(TwoDatabases.OURS, "8");
        two.fill(8);
        String said = two.restore(two.backup(), TwoDatabases.OURS);
        assertThat(said).contains("schema version 8 was brought to");
        assertThat(TwoDatabases.migrate(TwoDatabases.OURS, "latest", two.to))
                .as("migrations left to make")
                .isZero();
        Map<String, String> were = digests(two.from);
        assertThat(TwoDatabases.texts(two.to, "select count(*)::text from event_rules"))
                .containsExactly("1");
        assertThat(digests(two.to).keySet()).containsAll(were.keySet());
    }

    @Test
    void everyKindOfColumnAndLinkComesBackAndNumbersGoOn() throws Exception {
        two.migrate(TwoDatabases.EVERY_KIND, "1");
        everyKind();
        two.restore(two.backup(), TwoDatabases.EVERY_KIND);
        assertThat(TwoDatabases.texts(
                        two.to,
                        "select name || shouted || coalesce(boss::text, '-') || rank from numbered order by id"))
                .containsExactly("oneONE-7", "twoTWO18");
        assertThat(TwoDatabases.texts(two.to, "select times::text from seen"))
                .as("triggers slept")
                .containsExactly("1");
        assertThat(TwoDatabases.texts(
                        two.to,
                        "select weight::text || encode(raw, 'hex') || parts::text || (at = '2026-01-02T03:04:05.678901Z')"
                                + " from serial_one"))
                .containsExactly("0.1ff00{\"a,b\",NULL,\"tab\t\"}true");
        assertThat(TwoDatabases.texts(two.to, "select other from right_hand")).containsExactly("tied");
        assertThat(TwoDatabases.texts(two.to, "insert into numbered (name) values ('three') returning id::text"))
                .containsExactly("3");
        assertThat(TwoDatabases.texts(two.to, "insert into serial_one (weight) values (1) returning id::text"))
                .containsExactly("2");
        assertThat(TwoDatabases.texts(two.to, "select times::text from seen"))
                .as("triggers woke")
                .containsExactly("2");
        assertThatThrownBy(() -> TwoDatabases.execute(two.to, "insert into right_hand values ('x', 9, 'nobody')"))
                .hasMessageContaining("foreign key");
    }

    @Test
    void whatWasWrittenMeanwhileIsThereWholeOrNotAtAll() throws Exception {
        two.migrate(TwoDatabases.OURS, "latest");
        AtomicBoolean over = new AtomicBoolean();
        AtomicLong written = new AtomicLong();
        Thread writer = new Thread(() -> writePairs(over, written));
        writer.start();
        await().atMost(2, TimeUnit.MINUTES).until(() -> written.get() >= 200 || !writer.isAlive());
        long before = written.get();
        Path file = two.backup();
        long after = written.get();
        over.set(true);
        writer.join();
        two.restore(file, TwoDatabases.OURS);
        long events = Long.parseLong(
                TwoDatabases.texts(two.to, "select count(*)::text from event").get(0));
        assertThat(TwoDatabases.texts(
                        two.to,
                        "select count(*)::text from event e join event_rules r on r.event_id = e.id and r.version = 0"))
                .containsExactly(Long.toString(events));
        assertThat(TwoDatabases.texts(two.to, "select count(*)::text from event_rules"))
                .containsExactly(Long.toString(events));
        assertThat(events).isBetween(before, after + 1);
    }

    private void everyKind() throws SQLException {
        TwoDatabases.execute(two.from, "insert into numbered (name, boss) values ('one', null), ('two', 1)");
        TwoDatabases.execute(
                two.from,
                "insert into serial_one (at, weight, raw, parts) values ('2026-01-02T03:04:05.678901Z', 0.1,"
                        + " '\\xff00', array['a,b', null, E'tab\\t'])");
        TwoDatabases.execute(two.from, "insert into left_hand (id) values ('tied')");
        TwoDatabases.execute(two.from, "insert into right_hand values ('knot', 2, 'tied')");
        TwoDatabases.execute(two.from, "update left_hand set first_right = 'knot', first_place = 2");
        TwoDatabases.execute(two.from, "insert into no_key values ('b', 1, '{}'), ('a', 2, null), (null, null, '[1]')");
    }

    private void writePairs(AtomicBoolean over, AtomicLong written) {
        try (Connection connection = two.from.connect();
                PreparedStatement event =
                        connection.prepareStatement("insert into event (id, version, body) values (?, 0, '{}')");
                PreparedStatement rules = connection.prepareStatement(
                        "insert into event_rules (event_id, version, rules, kept_at) values (?, 0, '[]', now())")) {
            connection.setAutoCommit(false);
            while (!over.get()) {
                UUID id = UUID.randomUUID();
                event.setObject(1, id);
                event.executeUpdate();
                rules.setObject(1, id);
                rules.executeUpdate();
                connection.commit();
                written.incrementAndGet();
            }
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static Map<String, String> digests(PostgresForTests.Database database) throws Exception {
        Map<String, String> digests = new TreeMap<>();
        try (Connection connection = database.connect()) {
            connection.setAutoCommit(false);
            Schema schema = new Schema(connection);
            schema.speakPlainly();
            for (String table : schema.tables()) {
                Hashed hashed = new Hashed(OutputStream.nullOutputStream());
                schema.copyOut(table, schema.columns(table), hashed);
                digests.put(table, hashed.sha256Hex());
            }
        }
        return digests;
    }
}
