package campcloth.store;

import campcloth.access.AccessToken;
import campcloth.access.Account;
import campcloth.access.AuditLog;
import campcloth.access.TokenSecret;
import campcloth.access.Tokens;
import campcloth.figure.Refused;
import java.security.SecureRandom;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The tokens over PostgreSQL. */
@Component
class TokensInPostgres implements Tokens {

    private static final int LONGEST_NAME = 60;
    private static final String TOKEN = "token";

    /** When a token was last used is kept no finer than this, so that most uses write nothing. */
    private static final Duration FINE_ENOUGH = Duration.ofMinutes(10);

    private final JdbcTemplate sql;
    private final AuditLog audit;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    TokensInPostgres(JdbcTemplate sql, AuditLog audit, Clock clock) {
        this.sql = sql;
        this.audit = audit;
        this.clock = clock;
    }

    @Override
    @Transactional
    public TokenSecret make(UUID account, String name, Duration lasts) {
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw Refused.of(
                    "name", "is empty or longer than " + LONGEST_NAME + " characters", "say what the token is for");
        }
        if (lasts.compareTo(Duration.ofDays(1)) < 0 || lasts.compareTo(LONGEST) > 0) {
            throw Refused.of("days", "is not between 1 and " + LONGEST.toDays(), "choose a time in between");
        }
        sql.query("select 1 from account where id = ? for update", row -> {}, account);
        Integer there =
                sql.queryForObject("select count(*) from access_token where account_id = ?", Integer.class, account);
        if (there != null && there >= MOST) {
            throw Refused.of("name", "would be the token number " + (MOST + 1), "revoke one that is not needed");
        }
        TokenSecret secret = TokenSecret.random(random);
        UUID id = UUID.randomUUID();
        Instant now = clock.instant();
        sql.update(
                "insert into access_token (id, account_id, name, secret_sha256, made_at, expires_at) values (?, ?, ?, ?, ?, ?)",
                id,
                account,
                name.strip(),
                secret.digest(),
                Timestamp.from(now),
                Timestamp.from(now.plus(lasts)));
        audit.note("made", TOKEN, id.toString(), "lasts " + lasts.toDays() + " days");
        return secret;
    }

    @Override
    @Transactional(readOnly = true)
    public List<AccessToken> of(UUID account) {
        return sql.query(
                "select id, name, made_at, expires_at, last_used_at from access_token where account_id = ? order by made_at desc, id",
                TokensInPostgres::token,
                account);
    }

    @Override
    @Transactional
    public boolean revoke(UUID account, String tokenId) {
        Optional<UUID> id = Ids.uuid(tokenId);
        boolean gone = id.isPresent()
                && sql.update("delete from access_token where id = ? and account_id = ?", id.get(), account) > 0;
        if (gone) {
            audit.note("removed", TOKEN, tokenId, "revoked");
        }
        return gone;
    }

    @Override
    @Transactional
    public Optional<Account> use(TokenSecret secret) {
        Timestamp now = Timestamp.from(clock.instant());
        Optional<Account> account = sql
                .query(
                        "select " + AccountsInPostgres.COLUMNS
                                + " from account join access_token on access_token.account_id = account.id"
                                + " where secret_sha256 = ? and expires_at > ? and not disabled and not one_time",
                        AccountsInPostgres::account,
                        secret.digest(),
                        now)
                .stream()
                .findFirst();
        if (account.isPresent()) {
            sql.update(
                    "update access_token set last_used_at = ? where secret_sha256 = ? and (last_used_at is null or last_used_at < ?)",
                    now,
                    secret.digest(),
                    Timestamp.from(clock.instant().minus(FINE_ENOUGH)));
        }
        return account;
    }

    private static AccessToken token(ResultSet row, int number) throws SQLException {
        return new AccessToken(
                row.getObject("id", UUID.class),
                row.getString("name"),
                row.getTimestamp("made_at").toInstant(),
                row.getTimestamp("expires_at").toInstant(),
                Optional.ofNullable(row.getTimestamp("last_used_at")).map(Timestamp::toInstant));
    }
}
