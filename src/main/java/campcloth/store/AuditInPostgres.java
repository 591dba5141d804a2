package campcloth.store;

import campcloth.access.Askers;
import campcloth.access.AuditEntry;
import campcloth.access.AuditLog;
import campcloth.access.AuditTrail;
import java.sql.Connection;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The audit log over PostgreSQL. Whoever notes something without a transaction is refused: the note would outlive a change that failed. */
@Component
class AuditInPostgres implements AuditLog, AuditTrail {

    private static final int LONGEST = 500;

    private final JdbcTemplate sql;
    private final Askers askers;
    private final Clock clock;

    AuditInPostgres(JdbcTemplate sql, Askers askers, Clock clock) {
        this.sql = sql;
        this.askers = askers;
        this.clock = clock;
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public void note(String action, String thingKind, String thingId, String what) {
        write(sql, action, thingKind, thingId, what);
    }

    /** For work that keeps its transaction on a connection of its own. */
    void note(Connection connection, String action, String thingKind, String thingId, String what) {
        write(new JdbcTemplate(new SingleConnectionDataSource(connection, true)), action, thingKind, thingId, what);
    }

    private void write(JdbcTemplate to, String action, String thingKind, String thingId, String what) {
        UUID account = askers.now().account().orElse(null);
        to.update(
                """
                insert into audit_entry (at, account_id, account_name, action, thing_kind, thing_id, what)
                values (?, ?, (select name from account where id = ?), ?, ?, ?, ?)""",
                Timestamp.from(clock.instant()),
                account,
                account,
                bounded(action),
                bounded(thingKind),
                bounded(thingId),
                bounded(what));
    }

    @Override
    @Transactional(readOnly = true)
    public List<AuditEntry> latest(int page, int onAPage) {
        return sql.query(
                """
                select at, account_name, action, thing_kind, thing_id, what from audit_entry
                order by at desc, id desc limit ? offset ?""",
                (row, number) -> new AuditEntry(
                        row.getTimestamp("at").toInstant(),
                        Optional.ofNullable(row.getString("account_name")),
                        row.getString("action"),
                        row.getString("thing_kind"),
                        row.getString("thing_id"),
                        row.getString("what")),
                onAPage,
                (long) page * onAPage);
    }

    @Override
    @Transactional
    public int purge() {
        return sql.update(
                "delete from audit_entry where at < ?",
                Timestamp.from(clock.instant().minus(KEPT)));
    }

    private static String bounded(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST);
    }
}
