package campcloth.layout;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Supplier;

/**
 * Lets only so many layouts be searched at the same time as there are processors, so that the service answers everybody else.
 * Whoever finds all places taken waits a few seconds for one; a queue that is long already is not joined.
 */
public final class LayoutGate {

    /** How many are searched at once. */
    public static final int PLACES = Runtime.getRuntime().availableProcessors();

    private static final int MOST_WAITING = 32;
    private static final long PATIENCE_SECONDS = 3;

    /** How much is going on, and was since the start. */
    public record Load(int searching, int waiting, long searched, Duration inAll, long turnedAway) {}

    private final LongAdder searched = new LongAdder();
    private final LongAdder nanos = new LongAdder();
    private final LongAdder turnedAway = new LongAdder();
    private final Semaphore places = new Semaphore(PLACES, true);

    /** Searches, or throws {@link Busy}. */
    public <T> T through(Supplier<T> search) {
        if (places.getQueueLength() >= MOST_WAITING || !getsAPlace()) {
            turnedAway.increment();
            throw new Busy();
        }
        long begun = System.nanoTime();
        try {
            return search.get();
        } finally {
            searched.increment();
            nanos.add(System.nanoTime() - begun);
            places.release();
        }
    }

    public Load load() {
        return new Load(
                PLACES - places.availablePermits(),
                places.getQueueLength(),
                searched.sum(),
                Duration.ofNanos(nanos.sum()),
                turnedAway.sum());
    }

    private boolean getsAPlace() {
        try {
            return places.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
