package campcloth.job;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.LongAdder;
import java.util.function.Supplier;

/**
 * Lets only so much of what takes long be done at the same time as there are processors, so that the service answers everybody else.
 * Whoever finds all places taken waits a few seconds for one; a queue that is long already is not joined. Each kind of work has a gate
 * of its own.
 */
public abstract sealed class Gate permits LayoutGate, RankingGate {

    /** How many are at work at once. */
    public static final int PLACES = Runtime.getRuntime().availableProcessors();

    private static final int MOST_WAITING = 32;
    static final Duration PATIENCE = Duration.ofSeconds(3);
    private static final long LOOK_MS = 250;

    /** How much is going on, and was since the start. */
    public record Load(int working, int waiting, long done, Duration inAll, long turnedAway) {}

    private final String what;
    private final String whenBusy;
    private final Duration patience;
    private final LongAdder done = new LongAdder();
    private final LongAdder nanos = new LongAdder();
    private final LongAdder turnedAway = new LongAdder();
    private final Semaphore places = new Semaphore(PLACES, true);

    Gate(String what, String whenBusy, Duration patience) {
        this.what = what;
        this.whenBusy = whenBusy;
        this.patience = patience;
    }

    /** Does the work, or throws {@link Busy}. */
    public <T> T through(Supplier<T> work) {
        if (places.getQueueLength() >= MOST_WAITING || !getsAPlace(patience.toMillis(), TimeUnit.MILLISECONDS)) {
            turnedAway.increment();
            throw new Busy(what, whenBusy);
        }
        return done(work);
    }

    public Load load() {
        return new Load(
                PLACES - places.availablePermits(),
                places.getQueueLength(),
                done.sum(),
                Duration.ofNanos(nanos.sum()),
                turnedAway.sum());
    }

    /**
     * Does the work for somebody who does not wait for it: stands in line for as long as it takes.
     *
     * @param goOn asked a few times a second while there is no place; ends the waiting by throwing
     */
    public <T> T inTime(Runnable goOn, Supplier<T> work) {
        while (!getsAPlace(LOOK_MS, TimeUnit.MILLISECONDS)) {
            goOn.run();
        }
        return done(work);
    }

    private <T> T done(Supplier<T> work) {
        long begun = System.nanoTime();
        try {
            return work.get();
        } finally {
            done.increment();
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
