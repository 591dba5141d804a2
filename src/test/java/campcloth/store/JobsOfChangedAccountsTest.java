package campcloth.store;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Asker;
import campcloth.access.Role;
import campcloth.job.Claim;
import campcloth.job.JobKind;
import campcloth.job.NewJob;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;

/** A job that waits does nothing that its account may no longer do when its turn comes. */
class JobsOfChangedAccountsTest extends WorkedJobs {

    @Autowired
    private Accounts accounts;

    @ParameterizedTest
    @CsvSource({
        "MAKER KEEPER,         false, MAKER KEEPER",
        "MAKER,                false, MAKER",
        "MAKER KEEPER MARSHAL, false, MAKER KEEPER",
        "MAKER KEEPER,         true,  ''"
    })
    void itAsksWithTheRolesItHadAndStillHas(String now, boolean closed, String expected) {
        Account account = MadeAccounts.made(accounts, askers, Role.MAKER, Role.KEEPER);
        as(account.asker(), () -> jobs.add(NewJob.of(JobKind.LAYOUT, "{}")));
        askers.as(Asker.LOCAL, () -> accounts.change(account.id(), 0, roles(now), closed));
        Claim claim = queue.claim(LAYOUTS).orElseThrow();
        assertThat(claim.asker().account()).hasValue(account.id());
        assertThat(claim.asker().roles()).isEqualTo(roles(expected));
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
