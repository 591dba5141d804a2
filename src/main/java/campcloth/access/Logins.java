package campcloth.access;

import java.security.SecureRandom;
import java.time.Duration;
import java.util.Optional;

/** Logging in by name and password. */
public final class Logins {

    /** Longer than any password can be in the form in which people type it; not worth the work of looking at. */
    private static final int LONGEST_TYPED = 4 * Passwords.MOST;

    private final Accounts accounts;
    private final LoginWaits waits;
    private final PasswordHashes hashes;
    private final SecureRandom random;

    public Logins(Accounts accounts, LoginWaits waits, PasswordHashes hashes, SecureRandom random) {
        this.accounts = accounts;
        this.waits = waits;
        this.hashes = hashes;
        this.random = random;
    }

    /** What came of an attempt. */
    public sealed interface Outcome {

        record In(Account account) implements Outcome {}

        /** No such account, another password, or an account that is disabled: which of them is told to nobody. */
        record Wrong() implements Outcome {}

        /** Not tried: there were too many wrong ones. */
        record Waiting(Duration left) implements Outcome {}
    }

    /**
     * Tries a password. Where there is no such account it takes as long.
     *
     * @param mark what the browser shows to be known by; empty where it shows nothing
     */
    public Outcome tried(String typedName, String typedPassword, String mark) {
        Optional<AccountName> name = AccountName.in(typedName);
        Optional<Account> account = name.flatMap(accounts::byName);
        Optional<String> hash = account.flatMap(one -> accounts.passwordHash(one.id()));
        if (name.isEmpty()) {
            // nobody has such a name, so there is nothing to count
            hashes.matches("", hashes.ofNobody());
            return new Outcome.Wrong();
        }
        Tried byAnybody = Tried.byAnybody(name.get());
        Optional<Tried> known =
                hash.flatMap(kept -> KnownBrowser.in(mark, kept)).map(browser -> Tried.in(browser, name.get()));
        if (known.isPresent() && waits.begin(known.get()).isEmpty()) {
            return compared(account, hash, typedPassword, known.get());
        }
        Optional<Duration> wait = waits.begin(byAnybody);
        return wait.isPresent() ? new Outcome.Waiting(wait.get()) : compared(account, hash, typedPassword, byAnybody);
    }

    /** Whether that is the password of the account that is logged in; counted like attempts to log in, but by itself. */
    public Outcome confirmed(Account account, String typedPassword) {
        Tried itself = Tried.byItself(account.name());
        Optional<Duration> wait = waits.begin(itself);
        return wait.isPresent()
                ? new Outcome.Waiting(wait.get())
                : compared(Optional.of(account), accounts.passwordHash(account.id()), typedPassword, itself);
    }

    private Outcome compared(Optional<Account> account, Optional<String> hash, String typedPassword, Tried counted) {
        String password = typedPassword.length() > LONGEST_TYPED ? "" : Passwords.normal(typedPassword);
        boolean right = hashes.matches(password, hash.orElseGet(hashes::ofNobody));
        if (!right || hash.isEmpty() || account.filter(one -> !one.disabled()).isEmpty()) {
            waits.refused(counted);
            return new Outcome.Wrong();
        }
        waits.clear(counted);
        if (hashes.isOutdated(hash.get())) {
            accounts.rehash(account.get().id(), hashes.hash(password));
        }
        return new Outcome.In(account.get());
    }

    /** By which the browser in which an account just logged in is known again; none where the account has no password here. */
    public Optional<String> mark(Account account) {
        return accounts.passwordHash(account.id())
                .map(hash -> KnownBrowser.random(random).mark(hash));
    }

    /** Gives an account the password that its owner chose. */
    public void choose(Account account, String typedPassword, String field) {
        Passwords.check(account.name(), typedPassword, field);
        accounts.setPassword(account.id(), hashes.hash(Passwords.normal(typedPassword)), false);
    }
}
