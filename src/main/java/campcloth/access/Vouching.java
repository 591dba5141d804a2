package campcloth.access;

import campcloth.access.Accounts.Proof;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** The accounts of people for whom another service vouches: made when they come for the first time. */
public final class Vouching {

    private static final String NAMELESS = "maker";
    private static final int MOST_TRIED = 1000;

    private final Accounts accounts;

    public Vouching(Accounts accounts) {
        this.accounts = accounts;
    }

    /**
     * The account of somebody, who may do at least what makers may.
     *
     * @param wishedName what the other service calls them
     * @param administrator whether those who run the service named them as one who keeps the accounts
     */
    public Account account(Proof.Vouched vouched, String wishedName, boolean administrator) {
        Optional<Account> known = accounts.bySubject(vouched);
        if (known.isEmpty()) {
            Set<Role> roles = administrator ? Set.of(Role.values()) : Set.of(Role.MAKER);
            return accounts.make(freeName(wishedName), roles, vouched);
        }
        Account account = known.get();
        if (administrator && !account.disabled() && !account.roles().contains(Role.ADMINISTRATOR)) {
            Set<Role> roles = EnumSet.copyOf(account.roles());
            roles.add(Role.ADMINISTRATOR);
            if (accounts.change(account.id(), account.version(), roles, false) instanceof Accounts.Change.Done done) {
                return done.account();
            }
        }
        return account;
    }

    private AccountName freeName(String wished) {
        String bare =
                wished.replaceFirst("@.*", "").replaceAll("[^A-Za-z0-9._-]", "").replaceFirst("^[^A-Za-z0-9]+", "");
        int room = AccountName.MOST - String.valueOf(MOST_TRIED).length() - 1;
        String base = bare.length() < AccountName.LEAST ? NAMELESS : bare.substring(0, Math.min(bare.length(), room));
        for (int i = 1; i < MOST_TRIED; i++) {
            AccountName name = new AccountName(i == 1 ? base : base + "-" + i);
            if (accounts.byName(name).isEmpty()) {
                return name;
            }
        }
        throw new IllegalStateException("no free name like " + base);
    }
}
