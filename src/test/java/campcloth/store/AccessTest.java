package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.Accounts.Proof;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.AuditEntry;
import campcloth.access.AuditLog;
import campcloth.access.AuditTrail;
import campcloth.access.LoginWaits;
import campcloth.access.Role;
import campcloth.access.TokenSecret;
import campcloth.access.Tokens;
import campcloth.figure.Refused;
import campcloth.journey.WholeService;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.IllegalTransactionStateException;
import org.springframework.transaction.support.TransactionTemplate;

/** Accounts, tokens, waits and the audit log as the database keeps them. */
@WholeService
class AccessTest {

    private static final Proof.Password PASSWORD = new Proof.Password("{made up}", false);

    @Autowired
    private Accounts accounts;

    @Autowired
    private Tokens tokens;

    @Autowired
    private AuditLog audit;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private LoginWaits loginWaits;

    @Autowired
    private Askers askers;

    @Autowired
    private JdbcTemplate sql;

    @Autowired
    private TransactionTemplate transaction;

    @Test
    void aNoteIsKeptWithItsChangeOrNotAtAll() {
        String thing = UUID.randomUUID().toString();
        transaction.executeWithoutResult(status -> {
            audit.note("changed", "cloth", thing, "its name");
            status.setRollbackOnly();
        });
        assertThat(notes(thing)).isEmpty();
        transaction.executeWithoutResult(status -> audit.note("changed", "cloth", thing, "its name"));
        assertThat(notes(thing)).singleElement().satisfies(entry -> {
            assertThat(entry.account()).isEmpty();
            assertThat(entry.what()).isEqualTo("its name");
        });
        assertThatThrownBy(() -> audit.note("changed", "cloth", thing, "without a change"))
                .isInstanceOf(IllegalTransactionStateException.class);
    }

    @Test
    void aNoteSaysWhoDidIt() {
        Account account = made(Set.of(Role.KEEPER));
        String thing = UUID.randomUUID().toString();
        askers.as(account.asker(), () -> {
            transaction.executeWithoutResult(status -> audit.note("removed", "cloth", thing, "x".repeat(2000)));
            return account;
        });
        AuditEntry entry = notes(thing).get(0);
        assertThat(entry.account()).hasValue(account.name().text());
        assertThat(entry.what()).hasSize(500);
    }

    @Test
    void aChangeOfAnAccountThatIsRefusedLeavesNoNote() {
        Account account = made(Set.of(Role.MAKER));
        int before = notes(account.id().toString()).size();
        assertThatThrownBy(() -> accounts.change(account.id(), account.version(), Set.of(), false))
                .isInstanceOf(Refused.class);
        assertThat(accounts.change(account.id(), 7, Set.of(Role.MAKER), false)).isEqualTo(new Accounts.Change.Stale(0));
        assertThat(notes(account.id().toString())).hasSize(before);
        accounts.change(account.id(), account.version(), Set.of(Role.MARSHAL), false);
        assertThat(notes(account.id().toString())).hasSize(before + 1);
    }

    @Test
    void linesGoAfterFourHundredDays() {
        String thing = UUID.randomUUID().toString();
        Moving clock = new Moving(Instant.now().minus(Duration.ofDays(399)));
        AuditInPostgres then = new AuditInPostgres(sql, askers, clock);
        then.note("changed", "cloth", thing, "younger");
        clock.pass(Duration.ofDays(-2));
        then.note("changed", "cloth", thing, "older");
        assertThat(trail.purge()).isPositive();
        assertThat(notes(thing)).extracting(AuditEntry::what).containsExactly("younger");
    }

    @ParameterizedTest
    @CsvSource({"MAKER, false", "ADMINISTRATOR, true"})
    void theLastAdministratorStaysOne(Role role, boolean disabled) {
        transaction.executeWithoutResult(status -> {
            sql.update("delete from account");
            Account last = made(Set.of(Role.MAKER, Role.ADMINISTRATOR));
            made(Set.of(Role.KEEPER));
            assertThatThrownBy(() -> accounts.change(last.id(), 0, Set.of(role), disabled))
                    .isInstanceOf(Refused.class)
                    .hasMessageContaining("nobody who keeps the accounts");
            status.setRollbackOnly();
        });
    }

    @Test
    void aNameIsTakenInEveryCase() {
        Account account = made(Set.of(Role.MAKER));
        AccountName same = new AccountName(account.name().text().toUpperCase(Locale.ROOT));
        assertThatThrownBy(() -> accounts.make(same, Set.of(Role.MAKER), PASSWORD))
                .hasMessageContaining("taken");
        assertThat(accounts.byName(same.text())).hasValue(account);
    }

    @Test
    void ofATokenOnlyItsDigestIsKept() {
        Account account = made(Set.of(Role.MAKER));
        TokenSecret secret = tokens.make(account.id(), "script", Duration.ofDays(2));
        assertThat(tokens.use(secret)).hasValue(account);
        assertThat(sql.queryForObject(
                        "select row_to_json(t)::text from access_token t where account_id = ?",
                        String.class,
                        account.id()))
                .doesNotContain(secret.text());
        TokensInPostgres later =
                new TokensInPostgres(sql, audit, new Moving(Instant.now().plus(Duration.ofDays(3))));
        assertThat(later.use(secret)).as("it has run out").isEmpty();
    }

    @Test
    void oneAccountHasABoundedNumberOfTokens() {
        Account account = made(Set.of(Role.MAKER));
        for (int i = 0; i < Tokens.MOST; i++) {
            tokens.make(account.id(), "script", Duration.ofDays(2));
        }
        assertThatThrownBy(() -> tokens.make(account.id(), "script", Duration.ofDays(2)))
                .isInstanceOf(Refused.class);
    }

    @Test
    void afterTenWrongOnesInARowThereIsAWaitThatGrows() {
        String name = "somebody-" + UUID.randomUUID();
        Moving clock = new Moving(Instant.parse("2026-05-01T12:00:00Z"));
        LoginWaitsInPostgres waits = new LoginWaitsInPostgres(sql, audit, clock);
        for (int i = 0; i < 10; i++) {
            assertThat(waits.begin(name)).as("attempt " + i).isEmpty();
        }
        assertThat(waits.begin(name)).hasValue(Duration.ofSeconds(30));
        clock.pass(Duration.ofSeconds(29));
        assertThat(waits.begin(name.toUpperCase(Locale.ROOT))).hasValue(Duration.ofSeconds(1));
        clock.pass(Duration.ofSeconds(1));
        assertThat(waits.begin(name)).as("the eleventh").isEmpty();
        assertThat(waits.begin(name)).hasValue(Duration.ofSeconds(60));
        for (int i = 0; i < 10; i++) {
            clock.pass(Duration.ofMinutes(15));
            assertThat(waits.begin(name))
                    .as("never longer than a quarter of an hour")
                    .isEmpty();
        }
        waits.clear(name);
        assertThat(waits.begin(name)).isEmpty();
        assertThat(waits.begin(name)).isEmpty();
    }

    @Test
    void afterADayTheCountBeginsAnew() {
        String name = "somebody-" + UUID.randomUUID();
        Moving clock = new Moving(Instant.parse("2026-05-01T12:00:00Z"));
        LoginWaitsInPostgres waits = new LoginWaitsInPostgres(sql, audit, clock);
        for (int i = 0; i < 9; i++) {
            waits.begin(name);
        }
        clock.pass(Duration.ofHours(25));
        assertThat(waits.begin(name)).isEmpty();
        assertThat(waits.begin(name)).isEmpty();
    }

    @Test
    void noMoreGetThroughAtTheSameTimeThanOneByOne() throws Exception {
        String name = "somebody-" + UUID.randomUUID();
        ExecutorService many = Executors.newFixedThreadPool(8);
        try {
            List<Future<Boolean>> attempts = IntStream.range(0, 60)
                    .mapToObj(i -> many.submit(() -> loginWaits.begin(name).isEmpty()))
                    .toList();
            int through = 0;
            for (Future<Boolean> attempt : attempts) {
                through += attempt.get() ? 1 : 0;
            }
            assertThat(through).isEqualTo(10);
        } finally {
            many.shutdownNow();
        }
    }

    @Test
    void aWrongAttemptIsNotedOfAccountsAlone() {
        Account account = made(Set.of(Role.MAKER));
        loginWaits.begin(account.name().text());
        loginWaits.refused(account.name().text());
        assertThat(notes(account.id().toString()))
                .anySatisfy(entry -> assertThat(entry.action()).isEqualTo("refused"));
        long lines = lines();
        loginWaits.refused("maybe a password in the wrong field");
        assertThat(lines()).isEqualTo(lines);
    }

    private Account made(Set<Role> roles) {
        String name = "a" + UUID.randomUUID().toString().substring(0, 30);
        return askers.as(Asker.LOCAL, () -> accounts.make(new AccountName(name), roles, PASSWORD));
    }

    private List<AuditEntry> notes(String thing) {
        return trail.latest(0, 100_000).stream()
                .filter(entry -> entry.thingId().equals(thing))
                .toList();
    }

    private long lines() {
        return trail.latest(0, 100_000).size();
    }

    /** A clock that is moved by hand. */
    private static final class Moving extends Clock {

        private Instant now;

        Moving(Instant now) {
            this.now = now;
        }

        void pass(Duration time) {
            now = now.plus(time);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
