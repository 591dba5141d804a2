package campcloth.store.postgres;

import static campcloth.store.postgres.OwnPostgresTest.answer;
import static campcloth.store.postgres.OwnPostgresTest.statement;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.SQLException;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A server that dies under the running application comes back; one that is stopped does not. */
@Timeout(600)
class WatchTest {

    private static TestFolder folder;
    private static OwnPostgres postgres;

    @BeforeAll
    static void start() throws Exception {
        folder = TestFolder.fresh();
        postgres = folder.start();
        statement(postgres, "create table kept (name text)");
    }

    @AfterAll
    static void stop() throws IOException {
        postgres.close();
        assertThat(folder.cluster().resolve("postmaster.pid")).doesNotExist();
        folder.close();
    }

    @Test
    void aKilledServerIsStartedAgainAtTheSameAddressWithAllThatWasAcknowledged() throws Exception {
        statement(postgres, "insert into kept values ('before the kill')");
        ProcessHandle killed = server();
        killed.destroyForcibly();
        awaitAnswer("select name from kept where name = 'before the kill'", "before the kill");
        assertThat(server().pid()).isNotEqualTo(killed.pid());
        statement(postgres, "insert into kept values ('after it')");
        assertThat(answer(postgres, "select count(*) from kept where name = 'after it'"))
                .isEqualTo("1");
    }

    @Test
    void withTheDiskNearlyFullItReadsOnAndTakesChangesAgainWhenThereIsRoom() throws Exception {
        postgres.keepFree(Long.MAX_VALUE / 2);
        awaitAnswer("show default_transaction_read_only", "on");
        assertThat(postgres.storage().isLow()).isTrue();
        assertThat(answer(postgres, "select count(*) >= 0 from kept")).isEqualTo("t");
        assertThatThrownBy(() -> statement(postgres, "insert into kept values ('no room')"))
                .isInstanceOfSatisfying(
                        SQLException.class,
                        failure -> assertThat(failure.getSQLState()).isEqualTo("25006"));
        postgres.keepFree(0);
        awaitAnswer("show default_transaction_read_only", "off");
        statement(postgres, "insert into kept values ('room')");
        assertThat(postgres.storage().isLow()).isFalse();
    }

    private static void awaitAnswer(String query, String expected) {
        await().atMost(3, TimeUnit.MINUTES)
                .ignoreExceptionsInstanceOf(SQLException.class)
                .untilAsserted(() -> assertThat(answer(postgres, query)).isEqualTo(expected));
    }

    private static ProcessHandle server() throws IOException {
        return ProcessHandle.of(
                        Long.parseLong(Files.readAllLines(folder.cluster().resolve("postmaster.pid"))
                                .get(0)
                                .strip()))
                .orElseThrow();
    }
}
