package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.AuditEntry;
import campcloth.access.AuditLog;
import campcloth.access.AuditTrail;
import campcloth.access.LoginWaits;
import campcloth.access.Role;
import campcloth.access.Tried;
import campcloth.journey.WholeService;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;

/** Waits after wrong passwords as the database keeps them. */
@WholeService
class LoginWaitsTest {

    @Autowired
    private Accounts accounts;

    @Autowired
    private LoginWaits loginWaits;

    @Autowired
    private AuditLog audit;

    @Autowired
    private AuditTrail trail;

    @Autowired
    private Askers askers;

    @Autowired
    private JdbcTemplate sql;

    @Autowired
    private TransactionTemplate transaction;

    /** Of today, since what is older is swept away now and then; moved by hand alone, however slow the machine. */
    private final MovedClock clock = new MovedClock(Instant.now().truncatedTo(ChronoUnit.SECONDS));

    @Test
    void afterTenWrongOnesInARowThereIsAWaitThatGrows() {
        Tried tried = somebody();
        LoginWaitsInPostgres waits = new LoginWaitsInPostgres(sql, audit, clock);
        for (int i = 0; i < 10; i++) {
            assertThat(waits.begin(tried)).as("attempt " + i).isEmpty();
        }
        assertThat(waits.begin(tried)).hasValue(Duration.ofSeconds(30));
        clock.pass(Duration.ofSeconds(29));
        assertThat(waits.begin(
                        Tried.byAnybody(new AccountName(tried.name().text().toUpperCase(Locale.ROOT)))))
                .hasValue(Duration.ofSeconds(1));
        clock.pass(Duration.ofSeconds(1));
        assertThat(waits.begin(tried)).as("the eleventh").isEmpty();
        assertThat(waits.begin(tried)).hasValue(Duration.ofSeconds(60));
        for (int i = 0; i < 10; i++) {
            clock.pass(Duration.ofMinutes(15));
            assertThat(waits.begin(tried))
                    .as("never longer than a quarter of an hour")
                    .isEmpty();
        }
        waits.clear(tried);
        assertThat(waits.begin(tried)).isEmpty();
        assertThat(waits.begin(tried)).isEmpty();
    }

    @Test
    void afterADayTheCountBeginsAnew() {
        Tried tried = somebody();
        LoginWaitsInPostgres waits = new LoginWaitsInPostgres(sql, audit, clock);
        for (int i = 0; i < 9; i++) {
            waits.begin(tried);
        }
        clock.pass(Duration.ofHours(25));
        assertThat(waits.begin(tried)).isEmpty();
        assertThat(waits.begin(tried)).isEmpty();
    }

    @Test
    void noMoreGetThroughAtTheSameTimeThanOneByOne() throws Exception {
        Tried tried = somebody();
        LoginWaitsInPostgres waits = new LoginWaitsInPostgres(sql, audit, clock);
        ExecutorService many = Executors.newFixedThreadPool(8);
        try {
            List<Future<Boolean>> attempts = IntStream.range(0, 60)
                    .mapToObj(i -> many.submit(() -> Boolean.TRUE.equals(
                            transaction.execute(status -> waits.begin(tried).isEmpty()))))
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
        Account account = made(Role.MAKER);
        Tried tried = Tried.byAnybody(account.name());
        loginWaits.begin(tried);
        loginWaits.refused(tried);
        assertThat(notes(account.id().toString()))
                .anySatisfy(entry -> assertThat(entry.action()).isEqualTo("refused"));
        Tried nobody = somebody();
        loginWaits.begin(nobody);
        assertThat(notedBy(() -> loginWaits.refused(tried))).isEqualTo(1);
        assertThat(notedBy(() -> loginWaits.refused(nobody))).isZero();
    }

    @Test
    void whoChangesTheirPasswordIsNotHeldUpByWhoeverTriesTheName() {
        Account account = made(Role.MAKER);
        for (int i = 0; i < 11; i++) {
            loginWaits.begin(Tried.byAnybody(account.name()));
        }
        assertThat(loginWaits.begin(Tried.byAnybody(account.name()))).isPresent();
        assertThat(loginWaits.begin(Tried.byItself(account.name()))).isEmpty();
    }

    @Test
    void anAdministratorEndsBothWaits() {
        Account account = made(Role.MAKER);
        List<Tried> both = List.of(Tried.byAnybody(account.name()), Tried.byItself(account.name()));
        both.forEach(tried -> IntStream.range(0, 11).forEach(i -> loginWaits.begin(tried)));
        askers.as(Asker.LOCAL, () -> {
            loginWaits.release(account);
            return account;
        });
        assertThat(both).allSatisfy(tried -> assertThat(loginWaits.begin(tried)).isEmpty());
    }

    private static Tried somebody() {
        return Tried.byAnybody(MadeAccounts.name());
    }

    private Account made(Role... roles) {
        return MadeAccounts.made(accounts, askers, roles);
    }

    private List<AuditEntry> notes(String thing) {
        return MadeAccounts.notes(trail, thing);
    }

    /** How many lines some work adds to the audit log, whatever others note and remove meanwhile. */
    private long notedBy(Runnable work) {
        return Objects.requireNonNull(transaction.execute(status -> {
            work.run();
            return Objects.requireNonNull(sql.queryForObject(
                    "select count(*) from audit_entry where xmin = pg_current_xact_id()::xid", Long.class));
        }));
    }
}
