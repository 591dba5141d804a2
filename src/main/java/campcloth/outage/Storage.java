package campcloth.outage;

/** The disk under a database that is our own. */
public interface Storage {

    /** Whether so little room is left that changes are no longer taken, so that reading goes on. */
    boolean isLow();
}
