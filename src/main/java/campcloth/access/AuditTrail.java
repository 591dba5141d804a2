package campcloth.access;

import java.time.Duration;
import java.util.List;

/** The audit log, to be read by administrators. */
public interface AuditTrail {

    /** How long lines are kept: a project choice, so that a year can be looked back on. */
    Duration KEPT = Duration.ofDays(400);

    /**
     * The newest first.
     *
     * @param page counted from 0
     */
    List<AuditEntry> latest(int page, int onAPage);

    /** Removes what is older than it may be; how many lines. */
    int purge();
}
