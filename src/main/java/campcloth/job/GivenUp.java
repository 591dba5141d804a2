package campcloth.job;

import java.util.List;

/** What is said of a job that was begun as often as jobs are. */
public final class GivenUp {

    private static final String TIMES = Job.MOST_ATTEMPTS + " times";

    private GivenUp() {}

    /** Its work went wrong each time. */
    static Failure afterErrors() {
        return new Failure(
                "The work went wrong " + TIMES + ", which is our fault; the log of the service says more.", List.of());
    }

    /** Whoever worked on it went away each time. */
    public static Failure afterLosses() {
        return new Failure(
                "The work was begun " + TIMES + " and each time the instance went away before its end.", List.of());
    }
}
