package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.data.jpa.test.autoconfigure.DataJpaTest;

@DataJpaTest
@OnRealPostgres
class OnRealPostgresTest {

    @Autowired
    private DataSource dataSource;

    @Test
    void theMigrationsHaveRunOnAPostgresOfTheSameMajorVersion() throws SQLException {
        try (Connection connection = dataSource.getConnection()) {
            assertThat(connection.getMetaData().getDatabaseMajorVersion()).isEqualTo(18);
            assertThat(count(connection, "select count(*) from pg_extension where extname = 'pg_trgm'"))
                    .isEqualTo(1);
        }
    }

    @Test
    void eachDatabaseIsItsOwn() throws SQLException {
        PostgresForTests.Database one = PostgresForTests.fresh();
        PostgresForTests.Database other = PostgresForTests.fresh();
        try (Connection connection = one.connect();
                Statement statement = connection.createStatement()) {
            statement.execute("create table cloth (name text)");
        }
        String tables = "select count(*) from information_schema.tables where table_schema = 'public'";
        try (Connection first = one.connect();
                Connection second = other.connect()) {
            assertThat(count(first, tables)).isEqualTo(1);
            assertThat(count(second, tables)).isZero();
        }
    }

    private static int count(Connection connection, String query) throws SQLException {
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            return rows.getInt(1);
        }
    }
}
