package campcloth.access;

import java.time.Duration;

/** Asked more often than may be. */
public final class TooOften extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final Duration wait;

    public TooOften(String because, Duration wait) {
        super(because);
        this.wait = wait;
    }

    /** Whole seconds until asking has a chance again, at least one. */
    public long waitSeconds() {
        return Math.max(1, wait.plusMillis(999).toSeconds());
    }
}
