package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;

/** What was kept before there were owners is common afterwards and shared by no link; the search index stays as it is. */
class OwnershipMigrationTest {

    private static final String ID = "fa0c1ba8-9fef-41b6-99f1-25c0402ca007";

    @Test
    void whatWasKeptIsCommon() throws SQLException {
        PostgresForTests.Database database = PostgresForTests.fresh();
        migrate(database, "8");
        try (Connection connection = database.connect();
                Statement statement = connection.createStatement()) {
            statement.execute("insert into event (id, version, body) values ('" + ID + "', 7, '{\"name\": \"\"}')");
            statement.execute("insert into cutting_plan (id, body) values ('" + ID + "', '{}')");
            statement.execute("insert into errand (id, body, created_at) values ('" + ID + "', '{\"planId\": \"" + ID
                    + "\"}', now())");
            statement.execute("insert into cloth (id, version, tick, origin, body) values ('own', 3, 1, 'OWN',"
                    + " '{\"name\": \"Linen\"}')");
            statement.execute("insert into cloth_index (cloth_id, name, near, words, fibres, seasons, fire_grade)"
                    + " values ('own', 'linen', 'linen', 'linen', '{}', '{}', 'LOW')");
            statement.execute("update cloth_index_state set tick = 1, rules = 'as they were'");
            migrate(database, "10");
            for (String table : List.of("event", "cutting_plan", "errand", "cloth")) {
                assertThat(one(
                                statement,
                                "select count(*) from " + table + " where owner is null and share_key is null"))
                        .as(table)
                        .isEqualTo("1");
            }
            assertThat(one(statement, "select count(*) from cloth_index where owner is null"))
                    .isEqualTo("1");
            assertThat(one(statement, "select rules from cloth_index_state")).isEqualTo("as they were");
            assertThat(one(statement, "select version from cloth")).isEqualTo("3");
        }
    }

    private static String one(Statement statement, String query) throws SQLException {
        try (ResultSet found = statement.executeQuery(query)) {
            assertThat(found.next()).isTrue();
            return found.getString(1);
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
