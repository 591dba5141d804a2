package campcloth.store.postgres;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.outage.CutLine;
import java.net.URI;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

/** A database that is not there yet: told at once, or awaited as long as was said. */
class AwaitedDatabaseTest {

    private static final PostgresForTests.Database REAL = PostgresForTests.fresh();
    private static final int PORT =
            URI.create(REAL.url().substring("jdbc:".length())).getPort();

    @Test
    void whoDoesNotWaitIsToldAtOnceWithoutTheSecretsOfTheAddress() throws Exception {
        try (CutLine line = new CutLine(() -> PORT)) {
            line.cut();
            long begun = System.nanoTime();
            assertThatThrownBy(() -> through(line, "&password=hush").await(Duration.ZERO))
                    .isInstanceOf(DatabaseUnavailable.class)
                    .hasMessageContaining("cannot be entered")
                    .hasMessageContaining("CAMPCLOTH_DATABASE_WAIT")
                    .hasMessageNotContaining("hush");
            assertThat(Duration.ofNanos(System.nanoTime() - begun))
                    .as("one try, on a busy machine too")
                    .isLessThan(Duration.ofMinutes(1));
        }
    }

    @Test
    void whoWaitsGoesOnOnceItIsThere() throws Exception {
        try (CutLine line = new CutLine(() -> PORT)) {
            line.cut();
            Executor later = CompletableFuture.delayedExecutor(1500, TimeUnit.MILLISECONDS);
            AtomicBoolean mended = new AtomicBoolean();
            CompletableFuture<Void> mending = CompletableFuture.runAsync(
                    () -> {
                        mended.set(true);
                        line.mend();
                    },
                    later);
            through(line, "").await(Duration.ofMinutes(3));
            assertThat(mended).isTrue();
            assertThat(mending).succeedsWithin(Duration.ofMinutes(1));
        }
    }

    @Test
    void aWrongPasswordIsTold() {
        assertThatThrownBy(() -> new AwaitedDatabase(REAL.url(), REAL.user(), "guessed").await(Duration.ZERO))
                .isInstanceOf(DatabaseUnavailable.class)
                .hasMessageContaining("password authentication failed");
    }

    private static AwaitedDatabase through(CutLine line, String more) {
        String url = REAL.url().replace(":" + PORT + "/", ":" + line.port() + "/");
        String options = url.contains("?") ? more : more.replace('&', '?');
        return new AwaitedDatabase(url + options, REAL.user(), REAL.password());
    }
}
