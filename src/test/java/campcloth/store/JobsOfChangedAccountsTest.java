package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.Accounts.Proof;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Role;
import campcloth.job.Claim;
import campcloth.job.JobKind;
import campcloth.job.JobQueue;
import campcloth.job.Jobs;
import campcloth.job.NewJob;
import campcloth.store.postgres.OnRealPostgres;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.jdbc.core.JdbcTemplate;

/** A job that waits does nothing that its account may no longer do when its turn comes. */
@SpringBootTest(properties = {"campcloth.jobs.run=false", "spring.datasource.hikari.maximum-pool-size=5"})
@OnRealPostgres
class JobsOfChangedAccountsTest {

    @Autowired
    private Accounts accounts;

    @Autowired
    private Jobs jobs;

    @Autowired
    private JobQueue queue;

    @Autowired
    private Askers askers;

    @Autowired
    private JdbcTemplate sql;

    @BeforeEach
    void nothingToDo() {
        sql.update("delete from job");
    }

    @ParameterizedTest
    @CsvSource({
        "MAKER KEEPER,         false, MAKER KEEPER",
        "MAKER,                false, MAKER",
        "MAKER KEEPER MARSHAL, false, MAKER KEEPER",
        "MAKER KEEPER,         true,  ''"
    })
    void itAsksWithTheRolesItHadAndStillHas(String now, boolean closed, String expected) {
        AccountName name = new AccountName("j" + UUID.randomUUID().toString().substring(0, 30));
        Account account = askers.as(
                Asker.LOCAL,
                () -> accounts.make(
                        name, EnumSet.of(Role.MAKER, Role.KEEPER), new Proof.Password("{made up}", false)));
        askers.as(account.asker(), this::handedIn);
        askers.as(Asker.LOCAL, () -> accounts.change(account.id(), 0, roles(now), closed));
        Claim claim = queue.claim(Set.of(JobKind.LAYOUT)).orElseThrow();
        assertThat(claim.asker().account()).hasValue(account.id());
        assertThat(claim.asker().roles()).isEqualTo(roles(expected));
    }

    private String handedIn() {
        try {
            return jobs.add(NewJob.of(JobKind.LAYOUT, "{}")).id().toString();
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }

    private static Set<Role> roles(String words) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        for (String word : words.split(" ")) {
            if (!word.isEmpty()) {
                roles.add(Role.valueOf(word));
            }
        }
        return roles;
    }
}
