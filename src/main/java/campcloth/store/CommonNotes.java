package campcloth.store;

import campcloth.access.Asker;
import campcloth.access.Holding;
import java.sql.Connection;
import org.springframework.stereotype.Component;

/**
 * Notes in the audit log what somebody changes that others rely on: what is common, what is somebody else's, what is shared by a link.
 * What is one's own and seen by nobody else is nobody's business, and where nobody logs in there is nobody to name.
 */
@Component
class CommonNotes {

    private final AuditInPostgres audit;
    private final Guard guard;

    CommonNotes(AuditInPostgres audit, Guard guard) {
        this.audit = audit;
        this.guard = guard;
    }

    /** As part of the transaction of the change. */
    void note(Holding holding, String action, String thingKind, String thingId, String what) {
        if (concernsOthers(holding)) {
            audit.note(action, thingKind, thingId, what);
        }
    }

    /** The same for what is common, in a transaction that its writer keeps on a connection. */
    void note(Connection connection, String action, String thingKind, String thingId, String what) {
        if (concernsOthers(Holding.COMMON)) {
            audit.note(connection, action, thingKind, thingId, what);
        }
    }

    private boolean concernsOthers(Holding holding) {
        Asker asker = guard.asker();
        return asker.account().isPresent()
                && (!holding.isOwn(asker) || holding.key().isPresent());
    }
}
