package campcloth.job;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The jobs as those see them who work. A job is claimed for a while and held by beats; where they fail to come, or the instance of
 * the claim is there no more, another worker takes it over. What the one before does then has no effect: each call says whether the
 * claim still held. Each method is one unit of work.
 */
public interface JobQueue {

    /** Claims the job of these kinds that has waited longest: by no one else at the same time. */
    Optional<Claim> claim(Set<JobKind> kinds);

    /** Holds a claim on, and tells how far the work has come. */
    Beat beat(Claim claim, Map<String, Double> progress);

    /** What was handed in beside. */
    InputStream payload(Claim claim) throws IOException;

    boolean done(Claim claim, String result);

    boolean failed(Claim claim, Failure why);

    boolean cancelled(Claim claim);

    /** Puts a job back whose work did not go wrong but has to end here; this beginning does not count. */
    boolean giveBack(Claim claim);

    /** Puts a job back whose work went wrong; it is begun again after a while. */
    boolean putOff(Claim claim);

    /** Removes what is kept no longer. */
    void sweep();

    /** What a beat was answered with. */
    enum Beat {
        GO_ON,
        CANCEL,
        LOST
    }
}
