package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.Accounts.Proof;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.AuditLog;
import campcloth.access.Role;
import campcloth.access.TokenSecret;
import campcloth.access.Tokens;
import campcloth.figure.Refused;
import campcloth.journey.WholeService;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/** Accounts and tokens as the database keeps them. */
@WholeService
class AccessTest {

    @Autowired
    private Accounts accounts;

    @Autowired
    private Tokens tokens;

    @Autowired
    private AuditLog audit;

    @Autowired
    private Askers askers;

    @Autowired
    private JdbcTemplate sql;

    @Autowired
    private TransactionTemplate transaction;

    @ParameterizedTest
    @CsvSource({"MAKER, false", "ADMINISTRATOR, true"})
    void theLastAdministratorStaysOne(Role role, boolean disabled) {
        transaction.executeWithoutResult(status -> {
            sql.update("delete from account");
            Account last = made(Role.MAKER, Role.ADMINISTRATOR);
            made(Role.KEEPER);
            assertThatThrownBy(() -> accounts.change(last.id(), 0, Set.of(role), disabled))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("nobody who keeps the accounts");
            status.setRollbackOnly();
        });
    }

    @Test
    void aNameIsTakenInEveryCase() {
        Account account = made(Role.MAKER);
        AccountName same = new AccountName(account.name().text().toUpperCase(Locale.ROOT));
        assertThatThrownBy(() -> accounts.make(same, Set.of(Role.MAKER), MadeAccounts.PASSWORD))
                .hasMessageContaining("taken");
        assertThat(accounts.byName(same)).hasValue(account);
    }

    @Test
    void whoComesTwiceAtOnceFromAnotherServiceHasOneAccount() {
        Proof.Vouched somebody =
                new Proof.Vouched("https://provider.example", UUID.randomUUID().toString());
        AccountName name = MadeAccounts.name();
        Account first = askers.as(Asker.LOCAL, () -> accounts.make(name, Set.of(Role.MAKER), somebody));
        assertThat(askers.as(Asker.LOCAL, () -> accounts.make(name, Set.of(Role.MAKER), somebody)))
                .isEqualTo(first);
    }

    @Test
    void ofATokenOnlyItsDigestIsKept() {
        Account account = made(Role.MAKER);
        TokenSecret secret = tokens.make(account.id(), "script", Duration.ofDays(2));
        assertThat(tokens.use(secret)).hasValue(account);
        assertThat(sql.queryForObject(
                        "select row_to_json(t)::text from access_token t where account_id = ?",
                        String.class,
                        account.id()))
                .doesNotContain(secret.text());
        TokensInPostgres later =
                new TokensInPostgres(sql, audit, new MovedClock(Instant.now().plus(Duration.ofDays(3))));
        assertThat(later.use(secret)).as("it has run out").isEmpty();
    }

    @Test
    void oneAccountHasABoundedNumberOfTokens() {
        Account account = made(Role.MAKER);
        for (int i = 0; i < Tokens.MOST; i++) {
            tokens.make(account.id(), "script", Duration.ofDays(2));
        }
        assertThatThrownBy(() -> tokens.make(account.id(), "script", Duration.ofDays(2)))
                .isInstanceOf(Refused.class);
    }

    private Account made(Role... roles) {
        return MadeAccounts.made(accounts, askers, roles);
    }
}
