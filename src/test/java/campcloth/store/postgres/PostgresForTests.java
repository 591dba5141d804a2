package campcloth.store.postgres;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;

/**
 * A real PostgreSQL for tests, started once a JVM at the first need: in a container where an engine answers, else the
 * application's own server under {@code target/}. The same tests run on both, each on a new, empty database, as a role
 * that is no superuser.
 */
public final class PostgresForTests {

    private static final Logger LOG = LoggerFactory.getLogger(PostgresForTests.class);
    private static final int MOST_PROCESSES = 4;

    /** As the container has: one application needs far fewer, but the contexts of many tests share the server. */
    private static final int MOST_CONNECTIONS = 100;

    private static final String IMAGE = "postgres:18-alpine";

    /** The way into one database. */
    public record Database(String url, String user, String password) {

        public Connection connect() throws SQLException {
            return DriverManager.getConnection(url, user, password);
        }
    }

    /** A running server as its superuser sees it. */
    private record Running(UnaryOperator<String> urls, String superuser, String superPassword, String password) {

        Connection connect() throws SQLException {
            return DriverManager.getConnection(urls.apply("postgres"), superuser, superPassword);
        }
    }

    private static final class Once {
        static final Running SERVER = start();
    }

    private PostgresForTests() {}

    /** A new, empty database that nothing else uses. */
    public static Database fresh() {
        String name = "test_" + UUID.randomUUID().toString().replace('-', '_');
        try (Connection connection = Once.SERVER.connect();
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name + " owner " + Settings.USER);
        } catch (SQLException failure) {
            throw new IllegalStateException("no database for the test", failure);
        }
        return new Database(Once.SERVER.urls.apply(name), Settings.USER, Once.SERVER.password);
    }

    private static Running start() {
        if (DockerEngine.answers()) {
            try {
                return inContainer();
            } catch (RuntimeException failure) {
                LOG.warn("The container did not start, so our own server is used: {}", failure.getMessage());
            }
        }
        return ourOwn();
    }

    private static Running inContainer() {
        PostgreSQLContainer container = new PostgreSQLContainer(IMAGE);
        container.start();
        String password = UUID.randomUUID().toString();
        Running running = new Running(
                name -> "jdbc:postgresql://" + container.getHost() + ":" + container.getMappedPort(5432) + "/" + name,
                container.getUsername(),
                container.getPassword(),
                password);
        onServer(running, "create role " + Settings.USER + " login password '" + password + "'");
        return running;
    }

    private static Running ourOwn() {
        OwnPostgres postgres = inAFolderOfItsOwn(1);
        Running running =
                new Running(postgres.entry()::url, Settings.SUPERUSER, postgres.password(), postgres.password());
        if (answer(running, "select 'few' where current_setting('max_connections')::int < " + MOST_CONNECTIONS)
                .isEmpty()) {
            Runtime.getRuntime().addShutdownHook(new Thread(postgres::close));
            // What tests write need not outlive a power cut. The container that stands for it has the same.
            onServer(running, "alter system set fsync = off");
            onServer(running, "select pg_reload_conf()");
            answer(running, "select datname from pg_database where starts_with(datname, 'test_')")
                    .forEach(name -> onServer(running, "drop database " + name + " with (force)"));
            return running;
        }
        onServer(running, "alter system set max_connections = " + MOST_CONNECTIONS);
        postgres.close();
        return ourOwn();
    }

    /** Tests run in several processes at a time: the first folder that no other holds. */
    private static OwnPostgres inAFolderOfItsOwn(int number) {
        try {
            return OwnPostgres.start("target/postgres-for-tests-" + number, 0);
        } catch (DatabaseUnavailable held) {
            if (number == MOST_PROCESSES) {
                throw held;
            }
            return inAFolderOfItsOwn(number + 1);
        }
    }

    private static List<String> answer(Running running, String query) {
        List<String> answer = new ArrayList<>();
        try (Connection connection = running.connect();
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            while (rows.next()) {
                answer.add(rows.getString(1));
            }
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
        return answer;
    }

    private static void onServer(Running running, String command) {
        try (Connection connection = running.connect();
                Statement statement = connection.createStatement()) {
            statement.execute(command);
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }
}
