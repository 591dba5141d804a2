package campcloth.store;

import campcloth.access.Account;
import campcloth.access.AuditLog;
import campcloth.access.LockOut;
import campcloth.access.LoginWaits;
import campcloth.access.Tried;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Wrong passwords in a row over PostgreSQL. What was typed as a name and is none is not kept: it may be a password in the wrong field. */
@Component
class LoginWaitsInPostgres implements LoginWaits {

    private record Row(int wrong, Instant lastAt, Optional<Instant> waitUntil) {}

    private final JdbcTemplate sql;
    private final AuditLog audit;
    private final Clock clock;

    LoginWaitsInPostgres(JdbcTemplate sql, AuditLog audit, Clock clock) {
        this.sql = sql;
        this.audit = audit;
        this.clock = clock;
    }

    @Override
    @Transactional
    public Optional<Duration> begin(Tried tried) {
        String key = Digest.of(tried.key());
        Instant now = clock.instant();
        sql.update(
                "insert into login_wait (name_digest, wrong, last_at) values (?, 0, ?) on conflict do nothing",
                key,
                Timestamp.from(now));
        Row row = sql.queryForObject(
                "select wrong, last_at, wait_until from login_wait where name_digest = ? for update",
                (found, number) -> new Row(
                        found.getInt("wrong"),
                        found.getTimestamp("last_at").toInstant(),
                        Optional.ofNullable(found.getTimestamp("wait_until")).map(Timestamp::toInstant)),
                key);
        if (row == null) {
            throw new IllegalStateException("the row was just written");
        }
        Optional<Duration> left = row.waitUntil().filter(now::isBefore).map(until -> Duration.between(now, until));
        if (left.isPresent()) {
            return left;
        }
        boolean forgotten = row.lastAt().plus(LockOut.FORGOTTEN).isBefore(now);
        int wrong = forgotten ? 1 : row.wrong() + 1;
        Duration wait = LockOut.after(wrong);
        sql.update(
                "update login_wait set wrong = ?, last_at = ?, wait_until = ? where name_digest = ?",
                wrong,
                Timestamp.from(now),
                wait.isZero() ? null : Timestamp.from(now.plus(wait)),
                key);
        return Optional.empty();
    }

    @Override
    @Transactional
    public void refused(Tried tried) {
        sql.queryForList(
                        "select id::text from account where name_key = ?",
                        String.class,
                        tried.name().key())
                .forEach(id -> audit.note("refused", "login", id, attempt(tried)));
    }

    private String attempt(Tried tried) {
        return sql
                .queryForList(
                        "select wrong from login_wait where name_digest = ?", Integer.class, Digest.of(tried.key()))
                .stream()
                .findFirst()
                .map(wrong -> "wrong attempt " + wrong + " in a row, "
                        + (LockOut.after(wrong).isZero()
                                ? "no wait yet"
                                : "wait " + LockOut.after(wrong).toSeconds() + " s"))
                .orElse("wrong attempt");
    }

    @Override
    @Transactional
    public void clear(Tried tried) {
        sql.update("delete from login_wait where name_digest = ?", Digest.of(tried.key()));
    }

    @Override
    @Transactional
    public void release(Account account) {
        clear(Tried.byAnybody(account.name()));
        clear(Tried.byItself(account.name()));
        audit.note("changed", "account", account.id().toString(), "may try its password at once");
    }
}
