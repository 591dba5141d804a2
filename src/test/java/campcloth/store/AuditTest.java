package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Askers;
import campcloth.access.AuditEntry;
import campcloth.access.AuditLog;
import campcloth.access.AuditTrail;
import campcloth.access.Role;
import campcloth.figure.Refused;
import campcloth.journey.WholeService;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.IllegalTransactionStateException;
import org.springframework.transaction.support.TransactionTemplate;

/** The audit log as the database keeps it. */
@WholeService
class AuditTest {

    @Autowired
    private Accounts accounts;

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
        Account account = made(Role.KEEPER);
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
        Account account = made(Role.MAKER);
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
        MovedClock clock = new MovedClock(Instant.now().minus(Duration.ofDays(399)));
        AuditInPostgres then = new AuditInPostgres(sql, askers, clock);
        transaction.executeWithoutResult(status -> {
            then.note("changed", "cloth", thing, "younger");
            clock.pass(Duration.ofDays(-2));
            then.note("changed", "cloth", thing, "older");
            assertThat(trail.purge())
                    .as("in the same transaction, so that no other broom sees it")
                    .isPositive();
        });
        assertThat(notes(thing)).extracting(AuditEntry::what).containsExactly("younger");
    }

    private Account made(Role... roles) {
        return MadeAccounts.made(accounts, askers, roles);
    }

    private List<AuditEntry> notes(String thing) {
        return MadeAccounts.notes(trail, thing);
    }
}
