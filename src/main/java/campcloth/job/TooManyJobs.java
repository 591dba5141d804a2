package campcloth.job;

/** As many jobs wait as may. */
public final class TooManyJobs extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final boolean own;

    private TooManyJobs(boolean own, String message) {
        super(message);
        this.own = own;
    }

    /** Of one asker. */
    public static TooManyJobs own() {
        return new TooManyJobs(
                true, Jobs.MOST_OWN + " jobs of yours wait or run. Wait until one has ended, or cancel one.");
    }

    /** Of all together. */
    public static TooManyJobs altogether() {
        return new TooManyJobs(false, "As many jobs wait as are kept. Nothing was lost; try again in a minute.");
    }

    /** Whether it is the asker's own jobs that are too many. */
    public boolean isOwn() {
        return own;
    }
}
