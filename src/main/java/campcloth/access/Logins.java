package campcloth.access;

import java.time.Duration;
import java.util.Optional;

/** Logging in by name and password. */
public final class Logins {

    /** Longer than any password can be in the form in which people type it; not worth the work of looking at. */
    private static final int LONGEST_TYPED = 4 * Passwords.MOST;

    private final Accounts accounts;
    private final LoginWaits waits;
    private final PasswordHashes hashes;

    public Logins(Accounts accounts, LoginWaits waits, PasswordHashes hashes) {
        this.accounts = accounts;
        this.waits = waits;
        this.hashes = hashes;
    }

    /** What came of an attempt. */
    public sealed interface Outcome {

        record In(Account account) implements Outcome {}

        /** No such account, another password, or an account that is disabled: which of them is told to nobody. */
        record Wrong() implements Outcome {}

        /** Not tried: there were too many wrong ones. */
        record Waiting(Duration left) implements Outcome {}
    }

    /** Tries a password. Where there is no such account it takes as long. */
    public Outcome tried(String typedName, String typedPassword) {
        Optional<Duration> wait = waits.begin(typedName);
        if (wait.isPresent()) {
            return new Outcome.Waiting(wait.get());
        }
        Optional<Account> account = accounts.byName(typedName);
        Optional<String> hash = account.flatMap(one -> accounts.passwordHash(one.id()));
        String password = typedPassword.length() > LONGEST_TYPED ? "" : Passwords.normal(typedPassword);
        boolean right = hashes.matches(password, hash.orElseGet(hashes::ofNobody));
        if (!right || hash.isEmpty() || account.filter(one -> !one.disabled()).isEmpty()) {
            waits.refused(typedName);
            return new Outcome.Wrong();
        }
        waits.clear(typedName);
        if (hashes.isOutdated(hash.get())) {
            accounts.rehash(account.get().id(), hashes.hash(password));
        }
        return new Outcome.In(account.get());
    }

    /** Whether that is the account's password; counts like an attempt to log in. */
    public Outcome confirmed(Account account, String typedPassword) {
        return tried(account.name().text(), typedPassword);
    }

    /** Gives an account the password that its owner chose. */
    public void choose(Account account, String typedPassword, String field) {
        Passwords.check(account.name(), typedPassword, field);
        accounts.setPassword(account.id(), hashes.hash(Passwords.normal(typedPassword)), false);
    }
}
