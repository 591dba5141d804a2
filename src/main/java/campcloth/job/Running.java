package campcloth.job;

import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** A claim while somebody works on it. */
final class Running implements JobRun {

    /** Why work ends before its end. */
    enum Reason {
        CANCELLED,
        SHUTDOWN,
        LOST
    }

    private final Claim claim;
    private final JobQueue queue;
    private final Duration lease;
    private volatile Optional<Reason> stop = Optional.empty();
    private volatile Map<String, Double> progress = Map.of();
    private long heldNanos = System.nanoTime();

    Running(Claim claim, JobQueue queue, Duration lease) {
        this.claim = claim;
        this.queue = queue;
        this.lease = lease;
    }

    Claim claim() {
        return claim;
    }

    @Override
    public InputStream payload() throws IOException {
        return queue.payload(claim);
    }

    @Override
    public void tell(Map<String, Double> now) {
        progress = Map.copyOf(now);
    }

    /** What was told last. */
    Map<String, Double> progress() {
        return progress;
    }

    @Override
    public boolean isStopped() {
        return stop.isPresent();
    }

    /** Asks for the end; the first reason stands. */
    synchronized void stop(Reason reason) {
        stop = stop.or(() -> Optional.of(reason));
    }

    Optional<Reason> reason() {
        return stop;
    }

    /** Holds the claim on. Whoever does not get through for as long as it lasts has lost it. Called by one thread. */
    void beat() {
        try {
            switch (queue.beat(claim, progress)) {
                case GO_ON -> heldNanos = System.nanoTime();
                case CANCEL -> {
                    heldNanos = System.nanoTime();
                    stop(Reason.CANCELLED);
                }
                case LOST -> stop(Reason.LOST);
            }
        } catch (RuntimeException away) {
            if (System.nanoTime() - heldNanos > lease.toNanos()) {
                stop(Reason.LOST);
            }
        }
    }
}
