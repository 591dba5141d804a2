package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.store.StoredSamples;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever version of the schema somebody's database has, what is in it is there afterwards at the newest. */
class UpgradeTest {

    /** The first held no data. */
    static List<Integer> everyVersionThatHeldData() {
        return Stream.of(flyway(PostgresForTests.fresh(), "latest").info().all())
                .map(migration -> Integer.valueOf(migration.getVersion().getVersion()))
                .filter(version -> version >= 2)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("everyVersionThatHeldData")
    void whatIsThereStaysThere(int version) throws Exception {
        PostgresForTests.Database database = PostgresForTests.fresh();
        flyway(database, Integer.toString(version)).migrate();
        try (Connection connection = database.connect()) {
            StoredSamples.fill(connection, version);
            List<String> before = bodies(connection, version);
            flyway(database, "latest").migrate();
            assertThat(bodies(connection, version)).isEqualTo(before);
            assertThat(one(
                            connection,
                            "select version || rules::text from event_rules where event_id = '" + StoredSamples.EVENT
                                    + "'"))
                    .startsWith("7")
                    .contains("\"authority\"");
            assertThat(one(connection, "select tick::text from cloth_clock")).isEqualTo("4");
            assertThat(one(connection, "select name || ' ' || weight_gsm from cloth"))
                    .isEqualTo("Remnant from the bin 210");
        }
    }

    private static List<String> bodies(Connection connection, int version) throws SQLException {
        Stream<String> tables = Stream.concat(
                Stream.of("cloth", "event", "cutting_plan"),
                Stream.of(version >= 4 ? "cloth_swatch" : "", version >= 7 ? "errand" : "")
                        .filter(table -> !table.isEmpty()));
        return tables.map(table -> table + body(connection, table)).toList();
    }

    private static String body(Connection connection, String table) {
        try {
            return one(connection, "select string_agg(id || ' ' || body::text, ' ' order by id) from " + table);
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }

    private static String one(Connection connection, String query) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(query)) {
            assertThat(row.next()).as(query).isTrue();
            return String.valueOf(row.getString(1));
        }
    }

    private static Flyway flyway(PostgresForTests.Database database, String target) {
        return Flyway.configure()
                .dataSource(database.url(), database.user(), database.password())
                .target(target)
                .load();
    }
}
