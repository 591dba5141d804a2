package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnPostgresTest {

    private static TestFolder folder;
    private static OwnPostgres postgres;

    @BeforeAll
    static void start() throws IOException {
        folder = TestFolder.fresh();
        postgres = folder.start();
    }

    @AfterAll
    static void stop() throws IOException {
        postgres.close();
        folder.close();
    }

    @ParameterizedTest
    @CsvSource({
        "fsync, on",
        "full_page_writes, on",
        "synchronous_commit, on",
        "listen_addresses, 127.0.0.1",
        "unix_socket_directories, ''",
        "password_encryption, scram-sha-256",
        "max_connections, 40",
        "shared_buffers, 64MB",
        "server_encoding, UTF8",
        "log_timezone, UTC"
    })
    void theRunningServerIsDurableAndPrivate(String setting, String value) throws SQLException {
        assertThat(answerToTheSuperuser("show " + setting)).isEqualTo(value);
    }

    /** Asked from the file, since the driver asks for its own zone in each session. */
    @Test
    void theServersTimeZoneIsUtc() throws SQLException {
        assertThat(answerToTheSuperuser(
                        "select setting from pg_file_settings where lower(name) = 'timezone' and applied"))
                .isEqualTo("UTC");
    }

    @Test
    void theApplicationHasItsOwnRoleAndDatabase() throws SQLException {
        assertThat(answer("select current_user || '@' || current_database()")).isEqualTo("campcloth@campcloth");
    }

    @Test
    void theApplicationsRoleIsNoSuperuser() throws SQLException {
        assertThat(answer("select rolsuper from pg_roles where rolname = current_user"))
                .isEqualTo("f");
        assertThatThrownBy(() -> answer("select pg_read_file('/etc/hostname')")).isInstanceOf(SQLException.class);
    }

    @Test
    void wordsWithLettersBeyondAsciiAreFound() throws SQLException {
        assertThat(answer("select upper('wollköper')")).isEqualTo("WOLLKÖPER");
        statement("create extension if not exists pg_trgm");
        assertThat(answer("select word_similarity('köper', 'Wolle in KÖPER')")).isEqualTo("1");
    }

    @Test
    void theFolderAndTheSecretAreClosedToOthers() throws IOException {
        assumeTrue(DataFolder.knowsPosix(folder.data()), "needs POSIX permissions");
        assertThat(permissions(folder.data())).isEqualTo("rwx------");
        assertThat(permissions(folder.data().resolve("secret"))).isEqualTo("rw-------");
        assertThat(permissions(folder.data().resolve("campcloth.lock"))).isEqualTo("rw-------");
        assertThat(permissions(folder.data().resolve("postgres-18"))).isEqualTo("rwx------");
        assertThat(permissions(folder.data().resolve("bin-18.6"))).isEqualTo("rwx------");
    }

    @ParameterizedTest
    @CsvSource({"campcloth, guessed", "postgres, guessed", "campcloth, ''", "postgres, ''", "nobody, ''"})
    void nobodyComesInWithoutThePassword(String user, String guess) {
        String url = "jdbc:postgresql://127.0.0.1:" + postgres.entry().port() + "/campcloth";
        assertThatThrownBy(() -> DriverManager.getConnection(url, user, guess))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("password");
    }

    @Test
    void thePasswordIsLongAndNotTheSameElsewhere() throws IOException {
        assertThat(postgres.password()).hasSizeGreaterThanOrEqualTo(32);
        try (TestFolder other = TestFolder.fresh()) {
            DataFolder data = DataFolder.prepared(other.data().toString());
            assertThat(Secret.of(data, data.cluster(18)).password()).isNotEqualTo(postgres.password());
        }
    }

    @Test
    void theServerListensOnTheLoopbackAddressOnly() throws IOException {
        String hex = String.format(":%04X ", postgres.entry().port());
        Path tcp = Path.of("/proc/net/tcp");
        assumeTrue(Files.exists(tcp), "needs the list of sockets of Linux");
        assertThat(Files.readAllLines(tcp).stream().filter(line -> line.contains(hex) && line.contains(" 0A ")))
                .isNotEmpty()
                .allMatch(line -> line.contains(" 0100007F" + hex));
    }

    @Test
    void aSecondStartInTheSameProcessIsRefusedAndTheFirstUnharmed() throws Exception {
        assertThatThrownBy(folder::start)
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("in use by another Campcloth")
                .hasMessageContaining(Long.toString(ProcessHandle.current().pid()))
                .hasMessageContaining("CAMPCLOTH_DATA_DIR");
        assertThat(answer("select 1")).isEqualTo("1");
    }

    @Test
    void aSecondProcessIsRefusedAtOnceAndTheFirstUnharmed() throws Exception {
        assertThatThrownBy(folder::start).isInstanceOf(DatabaseUnavailable.class);
        try (ChildProcess second = ChildProcess.start(folder.data(), "wait")) {
            assertThat(second.await("REFUSED"))
                    .contains("in use by another Campcloth (process "
                            + ProcessHandle.current().pid() + ")")
                    .contains("CAMPCLOTH_DATA_DIR");
        }
        assertThat(answer("select 1")).isEqualTo("1");
    }

    static String permissions(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }

    private static String answer(String query) throws SQLException {
        return answer(postgres, query);
    }

    private static String answerToTheSuperuser(String query) throws SQLException {
        return answer(postgres, Settings.SUPERUSER, query);
    }

    static String answer(OwnPostgres server, String query) throws SQLException {
        return answer(server, Settings.USER, query);
    }

    private static String answer(OwnPostgres server, String user, String query) throws SQLException {
        try (Connection connection = DriverManager.getConnection(server.url(), user, server.password());
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(query)) {
            rows.next();
            return String.valueOf(rows.getString(1));
        }
    }

    private static void statement(String command) throws SQLException {
        statement(postgres, command);
    }

    static void statement(OwnPostgres server, String command) throws SQLException {
        try (Connection connection = DriverManager.getConnection(server.url(), Settings.USER, server.password());
                Statement statement = connection.createStatement()) {
            statement.execute(command);
        }
    }
}
