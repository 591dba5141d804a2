package campcloth.rest;

import campcloth.job.Job;
import java.util.Locale;

/** A job was to be cancelled that had ended by itself. */
final class JobEnded extends RuntimeException {

    private static final long serialVersionUID = 1L;

    JobEnded(Job job) {
        super("It is " + job.state().name().toLowerCase(Locale.ROOT)
                + "; there is nothing left to cancel. Read it with GET.");
    }
}
