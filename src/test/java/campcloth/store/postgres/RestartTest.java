package campcloth.store.postgres;

import static campcloth.store.postgres.OwnPostgresTest.answer;
import static campcloth.store.postgres.OwnPostgresTest.statement;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One folder, stopped and started again and again, with something in its way. */
class RestartTest {

    private static TestFolder folder;

    @BeforeAll
    static void makeDatabase() throws Exception {
        folder = TestFolder.fresh();
        try (OwnPostgres postgres = folder.start()) {
            statement(postgres, "create table swatch (name text)");
            statement(postgres, "insert into swatch values ('undyed linen')");
        }
    }

    @AfterAll
    static void remove() throws IOException {
        folder.close();
    }

    private static void startsWithItsData() throws SQLException {
        try (OwnPostgres postgres = folder.start()) {
            assertThat(answer(postgres, "select name from swatch")).isEqualTo("undyed linen");
        }
    }

    @Test
    void theDataSurvivesARestart() throws SQLException {
        startsWithItsData();
    }

    @Test
    void afterAStopNothingRunsAndNothingIsClaimed() throws SQLException {
        OwnPostgres postgres = folder.start();
        String url = postgres.url();
        postgres.close();
        assertThat(folder.cluster().resolve("postmaster.pid")).doesNotExist();
        assertThatThrownBy(() -> DriverManager.getConnection(url, Settings.USER, postgres.password()))
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("refused");
    }

    @Test
    void theProcessOfAnotherWhoGotTheOldNumberIsLeftAlone() throws Exception {
        Process other = new ProcessBuilder("sleep", "300").start();
        try {
            claim(Long.toString(other.pid()));
            startsWithItsData();
            assertThat(other.isAlive()).isTrue();
        } finally {
            other.destroyForcibly();
        }
    }

    /** The name of the program is not enough: it must serve this folder. */
    @Test
    void anotherPostgresWhoGotTheOldNumberIsLeftAlone() throws Exception {
        try (TestFolder elsewhere = TestFolder.fresh();
                OwnPostgres other = elsewhere.start()) {
            String pid = Files.readAllLines(elsewhere.cluster().resolve("postmaster.pid"))
                    .get(0);
            claim(pid);
            startsWithItsData();
            assertThat(answer(other, "select 1")).isEqualTo("1");
        }
    }

    @Test
    void aNumberOfNoProcessIsNoObstacle() throws Exception {
        Process dead = new ProcessBuilder("true").start();
        dead.waitFor();
        claim(Long.toString(dead.pid()));
        startsWithItsData();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "not a number", "99999999999999999999", "-1"})
    void aSpoiltPidFileIsNoObstacle(String firstLine) throws Exception {
        claim(firstLine);
        startsWithItsData();
    }

    @Test
    void halfMadeFoldersOfAKilledStartAreRemoved() throws Exception {
        Path programs = Files.createDirectories(folder.data().resolve("bin-18.6.unfinished-1/bin"));
        Path cluster = Files.createDirectories(folder.data().resolve("postgres-18.unfinished-2/base"));
        Files.writeString(programs.resolve("postgres"), "half of it");
        startsWithItsData();
        assertThat(programs).doesNotExist();
        assertThat(cluster).doesNotExist();
    }

    @Test
    void programsOfAnotherVersionGoOnceTheServerRuns() throws Exception {
        Path old = Files.createDirectories(folder.data().resolve("bin-18.1/bin"));
        startsWithItsData();
        assertThat(old).doesNotExist();
        assertThat(folder.programs().resolve("bin/postgres")).exists();
    }

    @Test
    void aTakenPortIsNamedAndTheLockLetGo() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            assertThatThrownBy(() -> OwnPostgres.start(folder.data().toString(), taken.getLocalPort()))
                    .isInstanceOf(DatabaseUnavailable.class)
                    .hasMessageContaining("port " + taken.getLocalPort())
                    .hasMessageContaining("CAMPCLOTH_POSTGRES_PORT");
        }
        startsWithItsData();
    }

    @Test
    void aFixedPortIsKept() throws Exception {
        int free = freePortThatNobodyIsGiven();
        try (OwnPostgres postgres = OwnPostgres.start(folder.data().toString(), free)) {
            assertThat(postgres.url()).contains("127.0.0.1:" + free + "/");
        }
    }

    @Test
    void aLostSecretIsNotReplacedByOneThatOpensNothing() throws Exception {
        Path secret = folder.data().resolve("secret");
        String password = Files.readString(secret);
        Files.delete(secret);
        assertThatThrownBy(folder::start)
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("password file")
                .hasMessageContaining("missing");
        assertThat(secret).doesNotExist();
        Files.writeString(secret, password);
        startsWithItsData();
        assertThat(OwnPostgresTest.permissions(secret)).isEqualTo("rw-------");
    }

    @Test
    void aServerThatCannotStartSaysWhyInOneSentence() throws Exception {
        Path access = folder.cluster().resolve("pg_hba.conf");
        String good = Files.readString(access);
        Files.writeString(access, "nonsense\n");
        assertThatThrownBy(folder::start)
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("PostgreSQL did not start: ")
                .hasMessageContaining("pg_hba.conf")
                .hasMessageContaining("postgres.log");
        Files.writeString(access, good);
        startsWithItsData();
    }

    /** Below those that the system gives to whoever asks for any, so that nobody has it before the server does. */
    private static int freePortThatNobodyIsGiven() {
        int begin = 20_000 + (int) (ProcessHandle.current().pid() % 5_000);
        return IntStream.range(begin, begin + 5_000)
                .filter(RestartTest::isFree)
                .findFirst()
                .orElseThrow();
    }

    private static boolean isFree(int port) {
        try (ServerSocket socket = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
            return socket.isBound();
        } catch (IOException taken) {
            return false;
        }
    }

    private static void claim(String firstLine) throws IOException {
        Path cluster = folder.cluster();
        Files.writeString(
                cluster.resolve("postmaster.pid"), firstLine + "\n" + cluster + "\n1700000000\n5432\n\n127.0.0.1\n");
    }
}
