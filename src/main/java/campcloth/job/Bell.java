package campcloth.job;

import java.time.Duration;
import java.util.concurrent.TimeUnit;

/** Wakes the workers of this instance when a job was handed in. */
public final class Bell {

    private long rung;

    public synchronized void ring() {
        rung++;
        notifyAll();
    }

    /** How often it was rung so far. */
    synchronized long count() {
        return rung;
    }

    /** Waits until it has been rung more often than that, for a while at most. */
    synchronized void await(long before, Duration most) throws InterruptedException {
        long end = System.nanoTime() + most.toNanos();
        long left = most.toNanos();
        while (rung == before && left > 0) {
            TimeUnit.NANOSECONDS.timedWait(this, left);
            left = end - System.nanoTime();
        }
    }
}
