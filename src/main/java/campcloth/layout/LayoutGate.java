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
    private static final long LOOK_MS = 250;

    /** How much is going on, and was since the start. */
    public record Load(int searching, int waiting, long searched, Duration inAll, long turnedAway) {}

    private final LongAdder searched = new LongAdder();
    private final LongAdder nanos = new LongAdder();
    private final LongAdder turnedAway = new LongAdder();
    private final Semaphore places = new Semaphore(PLACES, true);

    /** Searches, or throws {@link Busy}. */
    public <T> T through(Supplier<T> search) {
        if (places.getQueueLength() >= MOST_WAITING || !getsAPlace(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            turnedAway.increment();
            throw new Busy();
        }
        return searched(search);
    }

    public Load load() {
        return new Load(
                PLACES - places.availablePermits(),
                places.getQueueLength(),
                searched.sum(),
                Duration.ofNanos(nanos.sum()),
                turnedAway.sum());
    }

    /**
     * Searches for somebody who does not wait for it: stands in line for as long as it takes.
     *
     * @param goOn asked a few times a second while there is no place; ends the waiting by throwing
     */
    public <T> T inTime(Runnable goOn, Supplier<T> search) {
        while (!getsAPlace(LOOK_MS, TimeUnit.MILLISECONDS)) {
            goOn.run();
        }
        return searched(search);
    }

    private <T> T searched(Supplier<T> search) {
        long begun = System.nanoTime();
        try {
            return search.get();
        } finally {
            searched.increment();
            nanos.add(System.nanoTime() - begun);
            places.release();
        }
    }

    private boolean getsAPlace(long most, TimeUnit unit) {
        try {
            return places.tryAcquire(most, unit);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
