package campcloth.job;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * The jobs as whoever handed them in sees them; what somebody else handed in is as though it were not there. Each method is one
 * unit of work.
 */
public interface Jobs {

    /** Jobs of one asker that wait or run. */
    int MOST_OWN = 20;

    /** Jobs of all that wait or run. */
    int MOST = 1000;

    /** Bytes handed in beside jobs and kept, of all together. */
    long MOST_PAYLOAD_BYTES = 512L * 1024 * 1024;

    /**
     * Hands a job in.
     *
     * @throws TooManyJobs where as many wait as may
     * @throws IOException where the payload cannot be read
     */
    Job add(NewJob job) throws IOException;

    /**
     * Hands in another job on the bytes that are kept with one that has ended.
     *
     * @return the new job, or nothing where the other, or its bytes, are no longer here
     */
    Optional<Job> addOnPayloadOf(String id, String request);

    Optional<KeptJob> byId(String id);

    /** One's own, newest first. */
    List<Job> latest(int most);

    /** Asks for the end of a job: one that waits ends at once, one that runs soon. */
    Cancelling cancel(String id);

    /** Removes one that has ended; whether it was there. */
    boolean remove(String id);

    /** What came of asking for the end. */
    sealed interface Cancelling {

        record Missing() implements Cancelling {}

        /** It had ended by itself. */
        record Ended(Job job) implements Cancelling {}

        record Asked(Job job) implements Cancelling {}
    }
}
