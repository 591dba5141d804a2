package campcloth.access;

import java.time.Instant;
import java.util.Optional;

/**
 * A line of the audit log.
 *
 * @param account name of the account that did it, as it was then; none for the service itself and for strangers
 */
public record AuditEntry(
        Instant at, Optional<String> account, String action, String thingKind, String thingId, String what) {}
