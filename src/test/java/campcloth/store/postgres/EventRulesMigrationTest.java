package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;

/** The events of the second schema bring their rules along as the version at which they stand. */
class EventRulesMigrationTest {

    private static final String BODY =
            "{\"name\": \"\", \"rules\": [{\"authority\": \"EVENT\", \"statement\": \"No fur\"}]}";

    @Test
    void rulesOnFileBecomeTheirFirstKeptVersion() throws SQLException {
        PostgresForTests.Database database = PostgresForTests.fresh();
        migrate(database, "2");
        try (Connection connection = DriverManager.getConnection(database.url(), database.user(), database.password());
                Statement statement = connection.createStatement()) {
            statement.execute("insert into event (id, version, body, changed_at) values"
                    + " ('fa0c1ba8-9fef-41b6-99f1-25c0402ca007', 7, '" + BODY + "', '2026-05-01T10:00:00Z')");
            migrate(database, "3");
            try (ResultSet kept = statement.executeQuery(
                    "select version, rules #>> '{0,statement}' as words, kept_at = '2026-05-01T10:00:00Z' as then"
                            + " from event_rules")) {
                assertThat(kept.next()).isTrue();
                assertThat(kept.getLong("version")).isEqualTo(7);
                assertThat(kept.getString("words")).isEqualTo("No fur");
                assertThat(kept.getBoolean("then")).isTrue();
                assertThat(kept.next()).isFalse();
            }
        }
    }

    private static void migrate(PostgresForTests.Database database, String target) {
        Flyway.configure()
                .dataSource(database.url(), database.user(), database.password())
                .target(target)
                .load()
                .migrate();
    }
}
