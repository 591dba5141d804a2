package campcloth.store;

import campcloth.job.Pace;

/**
 * When a claim may be taken over: its time has run out; or its instance is not there ({@link Presence}) and it has not been held on for a
 * little while ({@link Pace#silence}). By the clock of the database.
 */
record Lapse(Presence presence, Pace pace) {

    /**
     * The condition over a row with a claim that {@code claimed_by} holds until a time; its one parameter is {@link #earlyMillis}. Asking
     * for a lock that nobody has takes it, shared with all who ask, until the transaction ends.
     */
    static String of(String until) {
        return "(" + until + " < clock_timestamp() or claimed_by is not null and " + until
                + " < clock_timestamp() + ?::bigint * interval '1 ms' and pg_try_advisory_xact_lock_shared(claimed_by))";
    }

    /** How long before its time a claim is looked at in which nobody was heard; none where this instance was away itself. */
    long earlyMillis() {
        return presence.mayJudge() ? pace.lease().minus(pace.silence()).toMillis() : 0;
    }
}
