package campcloth.rest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import campcloth.job.Gate;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** A gate all of whose places are taken for as long as something is tried, whoever stood in it before. */
public final class FullGate {

    private static final Duration PATIENCE = Duration.ofMinutes(2);

    /** More than any trial takes; a trial that fails ends it at once. */
    private static final Duration HELD_AT_MOST = Duration.ofMinutes(10);

    /** What is tried meanwhile. */
    public interface Trial {
        void run() throws Exception;
    }

    private FullGate() {}

    public static void whileFull(Gate gate, Trial trial) throws Exception {
        CountDownLatch inside = new CountDownLatch(Gate.PLACES);
        CountDownLatch done = new CountDownLatch(1);
        ExecutorService holders = Executors.newFixedThreadPool(Gate.PLACES);
        try {
            for (int i = 0; i < Gate.PLACES; i++) {
                holders.execute(() -> gate.inTime(() -> {}, () -> held(inside, done)));
            }
            assertThat(inside.await(PATIENCE.toSeconds(), TimeUnit.SECONDS))
                    .as("all places are taken")
                    .isTrue();
            trial.run();
        } finally {
            done.countDown();
            holders.shutdown();
        }
        assertThat(holders.awaitTermination(PATIENCE.toSeconds(), TimeUnit.SECONDS))
                .as("all places are given back")
                .isTrue();
    }

    /** Nobody's work, begun earlier, is in the gate any more. */
    static void awaitEmpty(Gate gate) {
        await("an empty gate").atMost(PATIENCE).until(() -> gate.load().working() == 0);
    }

    private static boolean held(CountDownLatch inside, CountDownLatch done) {
        inside.countDown();
        try {
            return done.await(HELD_AT_MOST.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
