package campcloth.store.backup;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.store.StoredSamples;
import campcloth.store.postgres.PostgresForTests;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import org.flywaydb.core.Flyway;

/** One database that is backed up, and an empty one to put the backup into. */
final class TwoDatabases {

    static final String EVERY_KIND = "classpath:db/backup";
    static final String OURS = "classpath:db/migration";

    final PostgresForTests.Database from = PostgresForTests.fresh();
    final PostgresForTests.Database to = PostgresForTests.fresh();
    private final Path folder;

    TwoDatabases(Path folder) {
        this.folder = folder;
    }

    Path backup() throws Exception {
        Path file = folder.resolve("backup.zip");
        try (Connection connection = from.connect()) {
            new Backup(connection, "test", Instant.parse("2027-05-02T09:30:00Z")).into(file);
        }
        return file;
    }

    String restore(Path file, String migrations) throws Exception {
        try (Connection connection = to.connect()) {
            return new Restore(connection, migrations).from(file);
        }
    }

    void fill(int version) throws Exception {
        try (Connection connection = from.connect()) {
            StoredSamples.fill(connection, version);
        }
    }

    void migrate(String where, String version) {
        migrate(where, version, from);
    }

    static int migrate(String where, String version, PostgresForTests.Database database) {
        return Flyway.configure()
                .dataSource(database.url(), database.user(), database.password())
                .locations(where)
                .target(version)
                .load()
                .migrate()
                .migrationsExecuted;
    }

    static List<String> texts(PostgresForTests.Database database, String query) throws SQLException {
        try (Connection connection = database.connect()) {
            return new Schema(connection).texts(query);
        }
    }

    static void execute(PostgresForTests.Database database, String command) throws SQLException {
        try (Connection connection = database.connect()) {
            new Schema(connection).execute(command);
        }
    }

    void checkNothingIsThere() throws SQLException {
        try (Connection connection = to.connect()) {
            assertThat(new Schema(connection).everything()).isEmpty();
        }
    }
}
