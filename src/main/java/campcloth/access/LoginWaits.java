package campcloth.access;

import java.time.Duration;
import java.util.Optional;

/** Wrong passwords in a row, over all instances of the service. */
public interface LoginWaits {

    /**
     * Begins an attempt, which counts as wrong until it is told to be right: that way no number of attempts at the same time gets past the
     * count.
     *
     * @return how long to wait, where the attempt may not be made
     */
    Optional<Duration> begin(Tried tried);

    /** The attempt was wrong indeed; noted in the audit log where there is such an account. */
    void refused(Tried tried);

    /** The attempt was right. */
    void clear(Tried tried);

    /** An administrator lets an account try anew; noted in the audit log. */
    void release(Account account);
}
