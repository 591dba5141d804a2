package campcloth.store.postgres;

import static campcloth.store.postgres.OwnPostgresTest.answer;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What the application acknowledged is still there after it was killed, whatever was killed with it. */
@Timeout(value = 600, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class KilledApplicationIT {

    private static final long ROWS = 300;

    private TestFolder folder;

    @BeforeEach
    void make() throws IOException {
        folder = TestFolder.fresh();
    }

    @AfterEach
    void remove() throws IOException {
        folder.close();
    }

    @Test
    void theServerThatOutlivesTheApplicationIsStoppedAndNoRowIsLost() throws Exception {
        try (ChildProcess application = ChildProcess.start(folder.data(), "write")) {
            application.await("WROTE " + ROWS);
            ProcessHandle server = server();
            application.kill();
            long acknowledged = lastAcknowledged(application);
            assertThat(command(server)).as("the orphan is alive").endsWith("/postgres");
            everyRowIsThereUpTo(acknowledged);
            assertThat(command(server)).as("the orphan is gone").isEmpty();
        }
    }

    @Test
    void noRowIsLostWhenTheServerIsKilledToo() throws Exception {
        try (ChildProcess application = ChildProcess.start(folder.data(), "write")) {
            application.await("WROTE " + ROWS);
            ProcessHandle server = server();
            server.destroyForcibly();
            application.kill();
            long acknowledged = lastAcknowledged(application);
            assertThat(folder.cluster().resolve("postmaster.pid")).exists();
            everyRowIsThereUpTo(acknowledged);
        }
    }

    @Test
    void aKillWhileTheDatabaseIsMadeLeavesAFolderThatStarts() throws Exception {
        killedInTheMiddle("Creating the database in", TestFolder::cluster);
        try (OwnPostgres postgres = folder.start()) {
            assertThat(answer(postgres, "select 1")).isEqualTo("1");
        }
        assertThat(new DataFolder(folder.data()).matching("*unfinished*")).isEmpty();
    }

    @Test
    void aKillWhileTheProgramsAreUnpackedLeavesAFolderThatStarts() throws Exception {
        killedInTheMiddle("Unpacking PostgreSQL", TestFolder::programs);
        try (OwnPostgres postgres = folder.start()) {
            assertThat(answer(postgres, "select 1")).isEqualTo("1");
        }
        assertThat(new DataFolder(folder.data()).matching("*unfinished*")).isEmpty();
    }

    @Test
    void theOrdinaryEndOfTheProcessStopsTheServerInOrder() throws Exception {
        try (ChildProcess application = ChildProcess.start(folder.data(), "spring")) {
            application.await("READY");
            application.process().destroy();
            assertThat(application.process().waitFor(3, TimeUnit.MINUTES)).isTrue();
        }
        assertThat(folder.cluster().resolve("postmaster.pid")).doesNotExist();
        assertThat(Files.readAllLines(folder.data().resolve("log/postgres.log")))
                .last()
                .asString()
                .endsWith("database system is shut down");
    }

    /** Kills an application that has begun to make a folder and not ended; where the kill came too late, another one in another place. */
    private void killedInTheMiddle(String saying, Function<TestFolder, Path> making) throws Exception {
        try (ChildProcess application = ChildProcess.start(folder.data(), "wait")) {
            application.await(saying);
            awaitSomethingUnfinished(application, making.apply(folder));
            application.kill();
        }
        if (Files.exists(making.apply(folder))) {
            folder.start().close();
            folder.close();
            folder = TestFolder.fresh();
            killedInTheMiddle(saying, making);
        }
    }

    /** Until the folder that is being made is there and holds something, so that the kill meets the work half done. */
    private void awaitSomethingUnfinished(ChildProcess application, Path made) throws Exception {
        boolean begun = false;
        while (!begun && !Files.exists(made)) {
            assertThat(application.process().waitFor(2, TimeUnit.MILLISECONDS))
                    .as("the child ended by itself")
                    .isFalse();
            begun = new DataFolder(folder.data())
                    .matching("*unfinished*").stream().anyMatch(KilledApplicationIT::holdsSomething);
        }
    }

    private static boolean holdsSomething(Path unfinished) {
        String[] names = unfinished.toFile().list();
        return names != null && names.length > 0;
    }

    private void everyRowIsThereUpTo(long acknowledged) throws Exception {
        assertThat(acknowledged).isGreaterThanOrEqualTo(ROWS);
        try (OwnPostgres postgres = folder.start()) {
            assertThat(answer(postgres, "select count(*) from written where n <= " + acknowledged))
                    .isEqualTo(Long.toString(acknowledged + 1));
        }
    }

    /** What the pipe still holds counts: the child had the server's word for each of these rows. */
    private static long lastAcknowledged(ChildProcess application) {
        return application.lastWords().stream()
                .filter(line -> line.matches("WROTE \\d+"))
                .mapToLong(line -> Long.parseLong(line.substring("WROTE ".length())))
                .max()
                .orElse(ROWS);
    }

    private ProcessHandle server() throws IOException {
        Path pidFile = folder.cluster().resolve("postmaster.pid");
        return ProcessHandle.of(
                        Long.parseLong(Files.readAllLines(pidFile).get(0).strip()))
                .orElseThrow();
    }

    /** Empty for a process that is dead, also where nobody has collected it yet. */
    private static String command(ProcessHandle process) {
        return process.info().command().orElse("");
    }
}
