package campcloth.access;

import java.security.SecureRandom;
import java.util.Base64;
import java.util.Set;

/** What an administrator does with accounts that takes more than one step. */
public final class AccountKeeping {

    private static final int ONE_TIME_BYTES = 15;

    private final Accounts accounts;
    private final LoginWaits waits;
    private final PasswordHashes hashes;
    private final SecureRandom random;

    public AccountKeeping(Accounts accounts, LoginWaits waits, PasswordHashes hashes, SecureRandom random) {
        this.accounts = accounts;
        this.waits = waits;
        this.hashes = hashes;
        this.random = random;
    }

    /**
     * An account whose password was just made.
     *
     * @param oneTimePassword to be handed to its owner, who has to change it; kept nowhere
     */
    public record Handed(Account account, String oneTimePassword) {

        /** Passwords do not belong into logs. */
        @Override
        public String toString() {
            return "Handed[" + account.name() + "]";
        }
    }

    public Handed make(AccountName name, Set<Role> roles) {
        String password = oneTime();
        return new Handed(
                accounts.make(name, roles, new Accounts.Proof.Password(hashes.hash(password), true)), password);
    }

    /** The very first administrator, who may do everything and chose the password. */
    public Account makeAdministrator(AccountName name, String password, String field) {
        Passwords.check(name, password, field);
        String hash = hashes.hash(Passwords.normal(password));
        return accounts.make(name, Set.of(Role.values()), new Accounts.Proof.Password(hash, false));
    }

    /** A new password for somebody who lost theirs; whatever was logged in under the account is so no more. */
    public Handed reset(Account account) {
        String password = oneTime();
        accounts.setPassword(account.id(), hashes.hash(password), true);
        waits.clear(Tried.byAnybody(account.name()));
        return new Handed(account, password);
    }

    /** Lets an account try its password at once again. */
    public void unlock(Account account) {
        waits.release(account);
    }

    private String oneTime() {
        byte[] bits = new byte[ONE_TIME_BYTES];
        random.nextBytes(bits);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bits);
    }
}
