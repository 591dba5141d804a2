package campcloth.journey;

import campcloth.access.Account;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.Accounts.Proof;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.PasswordHashes;
import campcloth.access.Role;
import campcloth.access.Tokens;
import java.time.Duration;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** Accounts of a hosted service under test: one of each role besides MAKER, two makers, all with the same password, each with a token. */
public class HostedAccounts {

    /** The account that the first start made; it has every role. */
    public static final String FIRST = "administrator";

    public static final String PASSWORD = "seven dry willow baskets";

    private static final String OTHER = "other-maker";

    private final Accounts accounts;
    private final Tokens tokens;
    private final PasswordHashes hashes;
    private final Askers askers;
    private final Map<String, String> bearers = new HashMap<>();

    public HostedAccounts(Accounts accounts, Tokens tokens, PasswordHashes hashes, Askers askers) {
        this.accounts = accounts;
        this.tokens = tokens;
        this.hashes = hashes;
        this.askers = askers;
    }

    /** The account that has the role, and is a maker besides; no other role. */
    public Account account(Role role) {
        return account("the-" + role.name().toLowerCase(Locale.ROOT), EnumSet.of(Role.MAKER, role));
    }

    /** A second maker. */
    public Account otherMaker() {
        return account(OTHER, Set.of(Role.MAKER));
    }

    /** The account of that name, made with those roles where there is none. */
    public synchronized Account account(String name, Set<Role> roles) {
        return accounts.byName(new AccountName(name))
                .orElseGet(() -> byTheService(() ->
                        accounts.make(new AccountName(name), roles, new Proof.Password(hashes.hash(PASSWORD), false))));
    }

    /** What the account with that role sends in the header Authorization. */
    public String bearer(Role role) {
        return bearer(account(role));
    }

    public synchronized String bearer(Account account) {
        return bearers.computeIfAbsent(
                account.name().text(),
                name -> "Bearer "
                        + byTheService(() -> tokens.make(account.id(), "test", Duration.ofDays(1)))
                                .text());
    }

    private <T> T byTheService(Supplier<T> work) {
        return askers.as(Asker.LOCAL, work);
    }
}
