package campcloth.store;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.AuditLog;
import campcloth.access.LockOut;
import campcloth.access.LoginWaits;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Wrong passwords in a row over PostgreSQL. */
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
    public Optional<Duration> begin(String typedName) {
        String name = digest(typedName);
        Instant now = clock.instant();
        sql.update(
                "insert into login_wait (name_digest, wrong, last_at) values (?, 0, ?) on conflict do nothing",
                name,
                Timestamp.from(now));
        Row row = sql.queryForObject(
                "select wrong, last_at, wait_until from login_wait where name_digest = ? for update",
                (found, number) -> new Row(
                        found.getInt("wrong"),
                        found.getTimestamp("last_at").toInstant(),
                        Optional.ofNullable(found.getTimestamp("wait_until")).map(Timestamp::toInstant)),
                name);
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
                name);
        return Optional.empty();
    }

    /** What was typed as a name may be a password in the wrong field: of names that are none nothing is noted. */
    @Override
    @Transactional
    public void refused(String typedName) {
        sql.queryForList("select id::text from account where name_key = ?", String.class, AccountName.key(typedName))
                .forEach(id -> audit.note("refused", "login", id, attempt(typedName)));
    }

    private String attempt(String typedName) {
        return sql
                .queryForList("select wrong from login_wait where name_digest = ?", Integer.class, digest(typedName))
                .stream()
                .findFirst()
                .map(wrong -> "wrong attempt " + wrong + " in a row, wait "
                        + LockOut.after(wrong).toSeconds() + " s")
                .orElse("wrong attempt");
    }

    @Override
    @Transactional
    public void clear(String typedName) {
        sql.update("delete from login_wait where name_digest = ?", digest(typedName));
    }

    @Override
    @Transactional
    public void release(Account account) {
        clear(account.name().text());
        audit.note("changed", "account", account.id().toString(), "may try its password at once");
    }

    private static String digest(String typedName) {
        return Digest.of(AccountName.key(typedName));
    }
}
