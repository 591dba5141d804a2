package campcloth.store;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.Accounts.Proof;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.AuditEntry;
import campcloth.access.AuditTrail;
import campcloth.access.Role;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;

/** Accounts that no other test has, and what is noted of one thing alone, whatever else is noted. */
final class MadeAccounts {

    static final Proof.Password PASSWORD = new Proof.Password("{made up}", false);
    private static final int LONGEST = 30;
    private static final int ALL = 100_000;

    private MadeAccounts() {}

    static AccountName name() {
        return new AccountName("a" + UUID.randomUUID().toString().substring(0, LONGEST));
    }

    static Account made(Accounts accounts, Askers askers, Role... roles) {
        return askers.as(Asker.LOCAL, () -> accounts.make(name(), EnumSet.copyOf(List.of(roles)), PASSWORD));
    }

    /** What the audit log holds about it, newest first. */
    static List<AuditEntry> notes(AuditTrail trail, String thing) {
        return trail.latest(0, ALL).stream()
                .filter(entry -> entry.thingId().equals(thing))
                .toList();
    }
}
