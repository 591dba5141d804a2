package campcloth.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** However many come at once, no more are at work than there are places, a few wait, and the others are sent away. */
class GateTest {

    private static final int COME = 100;
    private static final int MAY_WAIT = 32;

    /** Whatever else the machine does meanwhile. */
    private static final Duration LONG = Duration.ofMinutes(2);

    @Test
    void noMoreAreAtWorkThanThereArePlacesAndAllWhoWaitGetTheirTurn() throws Exception {
        Gate gate = new RankingGate(LONG);
        AtomicInteger working = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        List<Boolean> done = come(
                MAY_WAIT,
                () -> gate.through(() -> {
                    most.accumulateAndGet(working.incrementAndGet(), Math::max);
                    pause(10);
                    working.decrementAndGet();
                    return true;
                }));
        assertThat(done).hasSize(MAY_WAIT).containsOnly(true);
        assertThat(most).hasValueBetween(1, Gate.PLACES);
        assertThat(gate.load().done()).isEqualTo(MAY_WAIT);
        assertThat(gate.load().turnedAway()).isZero();
    }

    @Test
    void whoeverFindsTheQueueLongOrWaitsInVainIsToldSo() throws Exception {
        Gate gate = new RankingGate();
        CountDownLatch end = new CountDownLatch(1);
        CountDownLatch inside = new CountDownLatch(Gate.PLACES);
        ExecutorService holders = Executors.newFixedThreadPool(Gate.PLACES);
        try {
            IntStream.range(0, Gate.PLACES)
                    .forEach(place -> holders.execute(() -> gate.through(() -> {
                        inside.countDown();
                        return awaited(end, LONG.multipliedBy(5));
                    })));
            assertThat(awaited(inside, LONG)).isTrue();
            List<Boolean> done = come(COME, () -> {
                assertThatThrownBy(() -> gate.through(() -> true))
                        .isInstanceOf(Busy.class)
                        .hasMessageContaining("Try again in a few seconds");
                return false;
            });
            assertThat(done).hasSize(COME).containsOnly(false);
            assertThat(gate.load().turnedAway()).isEqualTo(COME);
            assertThat(gate.load().working())
                    .as("told so while all places were taken still")
                    .isEqualTo(Gate.PLACES);
            assertThat(new LayoutGate().through(() -> true))
                    .as("another kind of work")
                    .isTrue();
        } finally {
            end.countDown();
            holders.shutdown();
        }
        assertThat(holders.awaitTermination(LONG.toSeconds(), TimeUnit.SECONDS)).isTrue();
        assertThat(gate.through(() -> true)).isTrue();
    }

    @Test
    void aPlaceIsFreeAgainAfterAFailure() {
        Gate gate = new RankingGate();
        for (int i = 0; i <= 2 * Gate.PLACES; i++) {
            assertThatThrownBy(() -> gate.through(() -> {
                        throw new IllegalStateException("failed");
                    }))
                    .hasMessage("failed");
        }
        assertThat(gate.load().working()).isZero();
    }

    private interface Comer {
        boolean through();
    }

    private static List<Boolean> come(int count, Comer comer) throws Exception {
        ExecutorService all = Executors.newFixedThreadPool(count);
        try {
            List<Future<Boolean>> asked = IntStream.range(0, count)
                    .mapToObj(i -> all.submit(comer::through))
                    .toList();
            List<Boolean> told = new ArrayList<>();
            for (Future<Boolean> one : asked) {
                told.add(one.get(LONG.toSeconds(), TimeUnit.SECONDS));
            }
            return told;
        } finally {
            all.shutdownNow();
        }
    }

    private static boolean awaited(CountDownLatch latch, Duration atMost) {
        try {
            return latch.await(atMost.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static void pause(long ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}
