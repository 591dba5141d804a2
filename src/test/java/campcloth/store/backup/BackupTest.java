package campcloth.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import campcloth.store.StoredSamples;
import campcloth.store.postgres.PostgresForTests;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a backup holds comes back whole, or nothing does. */
class BackupTest {

    private static final String EVERY_KIND = "classpath:db/backup";
    private static final String OURS = "classpath:db/migration";

    private final Path folder;
    private final PostgresForTests.Database from = PostgresForTests.fresh();
    private final PostgresForTests.Database to = PostgresForTests.fresh();

    BackupTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void whatPeopleKeptComesBackAsItWas() throws Exception {
        migrate(OURS, "8");
        fill(8);
        migrate(OURS, "latest");
        Path file = backup();
        String said = restore(file, OURS);
        assertThat(said).contains("are back");
        assertThat(digests(to)).isEqualTo(digests(from)).containsKeys("cloth", "errand", "cloth_swatch");
        assertThat(texts(to, "select name || '/' || weight_gsm::text from cloth"))
                .containsExactly("Remnant from the bin/210");
        assertThat(texts(to, "select conname from pg_constraint where contype = 'f' and condeferrable"))
                .isEmpty();
        assertThat(migrate(OURS, "latest", to)).as("migrations left to make").isZero();
    }

    @Test
    void aBackupOfTheEighthSchemaEndsAtTheNewest() throws Exception {
        migrate(OURS, "8");
        fill(8);
        String said = restore(backup(), OURS);
        assertThat(said).contains("schema version 8 was brought to");
        assertThat(migrate(OURS, "latest", to)).as("migrations left to make").isZero();
        Map<String, String> were = digests(from);
        assertThat(texts(to, "select count(*)::text from event_rules")).containsExactly("1");
        assertThat(digests(to).keySet()).containsAll(were.keySet());
    }

    @Test
    void everyKindOfColumnAndLinkComesBackAndNumbersGoOn() throws Exception {
        migrate(EVERY_KIND, "1");
        everyKind();
        restore(backup(), EVERY_KIND);
        assertThat(texts(to, "select name || shouted || coalesce(boss::text, '-') || rank from numbered order by id"))
                .containsExactly("oneONE-7", "twoTWO18");
        assertThat(texts(to, "select times::text from seen"))
                .as("triggers slept")
                .containsExactly("1");
        assertThat(texts(
                        to,
                        "select weight::text || encode(raw, 'hex') || parts::text || (at = '2026-01-02T03:04:05.678901Z')"
                                + " from serial_one"))
                .containsExactly("0.1ff00{\"a,b\",NULL,\"tab\t\"}true");
        assertThat(texts(to, "select other from right_hand")).containsExactly("tied");
        assertThat(texts(to, "insert into numbered (name) values ('three') returning id::text"))
                .containsExactly("3");
        assertThat(texts(to, "insert into serial_one (weight) values (1) returning id::text"))
                .containsExactly("2");
        assertThat(texts(to, "select times::text from seen"))
                .as("triggers woke")
                .containsExactly("2");
        assertThatThrownBy(() -> execute(to, "insert into right_hand values ('x', 9, 'nobody')"))
                .hasMessageContaining("foreign key");
    }

    @Test
    void whatWasWrittenMeanwhileIsThereWholeOrNotAtAll() throws Exception {
        migrate(OURS, "latest");
        AtomicBoolean over = new AtomicBoolean();
        AtomicLong written = new AtomicLong();
        Thread writer = new Thread(() -> writePairs(over, written));
        writer.start();
        await().atMost(2, TimeUnit.MINUTES).until(() -> written.get() >= 200 || !writer.isAlive());
        long before = written.get();
        Path file = backup();
        long after = written.get();
        over.set(true);
        writer.join();
        restore(file, OURS);
        long events =
                Long.parseLong(texts(to, "select count(*)::text from event").get(0));
        assertThat(texts(
                        to,
                        "select count(*)::text from event e join event_rules r on r.event_id = e.id and r.version = 0"))
                .containsExactly(Long.toString(events));
        assertThat(texts(to, "select count(*)::text from event_rules")).containsExactly(Long.toString(events));
        assertThat(events).isBetween(before, after + 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 0.9, 0.999})
    void aFileThatWasCutShortIsRefusedAndNothingWritten(double share) throws Exception {
        migrate(OURS, "8");
        fill(8);
        Path file = backup();
        byte[] all = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(all, (int) (all.length * share)));
        refuses(file, "no whole backup");
    }

    @Test
    void aTableThatWasChangedIsRefusedAndNothingWritten() throws Exception {
        migrate(OURS, "8");
        fill(8);
        Path file = backup();
        Zips.change(file, "tables/cloth", text -> text.replace("Remnant", "Garment"));
        refuses(file, "its table cloth is not as it was written");
    }

    @Test
    void aListOfContentsThatWasChangedIsRefusedAndNothingWritten() throws Exception {
        migrate(OURS, "8");
        fill(8);
        Path file = backup();
        Zips.change(file, BackupFile.MANIFEST, text -> text.replace("\"rows\" : 1", "\"rows\" : 2"));
        refuses(file, "its list of contents was changed");
    }

    @Test
    void noByteThatIsSpoiltGetsThrough() throws Exception {
        migrate(OURS, "8");
        fill(8);
        Path file = backup();
        Manifest whole = BackupFile.verified(file);
        byte[] all = Files.readAllBytes(file);
        Path spoilt = folder.resolve("spoilt.zip");
        int refused = 0;
        for (int at = 0; at < all.length; at += 37) {
            byte[] other = all.clone();
            other[at] ^= 0x20;
            Files.write(spoilt, other);
            try {
                assertThat(BackupFile.verified(spoilt)).as("byte %d", at).isEqualTo(whole);
            } catch (BackupRefused expected) {
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(all.length / 37 / 2);
    }

    @Test
    void aDatabaseThatHoldsSomethingIsLeftAlone() throws Exception {
        migrate(OURS, "8");
        fill(8);
        Path file = backup();
        execute(to, "create table mine (a int)");
        assertThatThrownBy(() -> restore(file, OURS))
                .isInstanceOf(BackupRefused.class)
                .hasMessageContaining("not empty");
        assertThat(texts(to, "select relname from pg_class where relname in ('mine', 'cloth')"))
                .containsExactly("mine");
    }

    @Test
    void aBackupOfANewerProgramIsRefused() throws Exception {
        migrate(OURS, "8");
        execute(from, "update flyway_schema_history set version = '9999' where version = '8'");
        refuses(backup(), "newer Campcloth");
    }

    @Test
    void whatFailsInTheMiddleLeavesTheDatabaseEmpty() throws Exception {
        migrate(EVERY_KIND, "1");
        execute(from, "alter table no_key drop constraint no_key_checked_check");
        execute(from, "insert into no_key values ('spoilt', -1)");
        Path file = backup();
        assertThatThrownBy(() -> restore(file, EVERY_KIND)).isInstanceOf(SQLException.class);
        isEmpty();
    }

    @Test
    void aDatabaseOfSomethingElseIsNotBackedUpAndNoFileIsLeft() throws Exception {
        assertThatThrownBy(this::backup).isInstanceOf(BackupRefused.class).hasMessageContaining("nothing of Campcloth");
        assertThat(Files.list(folder)).isEmpty();
    }

    @Test
    void aFileThatIsThereIsNotOverwritten() throws Exception {
        migrate(OURS, "8");
        Files.writeString(folder.resolve("backup.zip"), "precious");
        assertThatThrownBy(this::backup).isInstanceOf(BackupRefused.class).hasMessageContaining("is there already");
        assertThat(folder.resolve("backup.zip")).hasContent("precious");
    }

    private void refuses(Path file, String because) throws SQLException {
        assertThatThrownBy(() -> restore(file, OURS))
                .isInstanceOf(BackupRefused.class)
                .hasMessageContaining(because);
        isEmpty();
    }

    private void isEmpty() throws SQLException {
        try (Connection connection = to.connect()) {
            assertThat(new Schema(connection).everything()).isEmpty();
        }
    }

    private Path backup() throws Exception {
        Path file = folder.resolve("backup.zip");
        try (Connection connection = from.connect()) {
            new Backup(connection, "test", Instant.parse("2027-05-02T09:30:00Z")).into(file);
        }
        return file;
    }

    private String restore(Path file, String migrations) throws Exception {
        try (Connection connection = to.connect()) {
            return new Restore(connection, migrations).from(file);
        }
    }

    private void fill(int version) throws Exception {
        try (Connection connection = from.connect()) {
            StoredSamples.fill(connection, version);
        }
    }

    private void everyKind() throws SQLException {
        execute(from, "insert into numbered (name, boss) values ('one', null), ('two', 1)");
        execute(
                from,
                "insert into serial_one (at, weight, raw, parts) values ('2026-01-02T03:04:05.678901Z', 0.1,"
                        + " '\\xff00', array['a,b', null, E'tab\\t'])");
        execute(from, "insert into left_hand (id) values ('tied')");
        execute(from, "insert into right_hand values ('knot', 2, 'tied')");
        execute(from, "update left_hand set first_right = 'knot', first_place = 2");
        execute(from, "insert into no_key values ('b', 1, '{}'), ('a', 2, null), (null, null, '[1]')");
    }

    private void writePairs(AtomicBoolean over, AtomicLong written) {
        try (Connection connection = from.connect();
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

    private void migrate(String where, String version) {
        migrate(where, version, from);
    }

    private static int migrate(String where, String version, PostgresForTests.Database database) {
        return Flyway.configure()
                .dataSource(database.url(), database.user(), database.password())
                .locations(where)
                .target(version)
                .load()
                .migrate()
                .migrationsExecuted;
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

    private static List<String> texts(PostgresForTests.Database database, String query) throws SQLException {
        try (Connection connection = database.connect()) {
            return new Schema(connection).texts(query);
        }
    }

    private static void execute(PostgresForTests.Database database, String command) throws SQLException {
        try (Connection connection = database.connect()) {
            new Schema(connection).execute(command);
        }
    }
}
