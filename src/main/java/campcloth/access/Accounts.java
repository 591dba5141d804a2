package campcloth.access;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** The accounts of a hosted service. What is changed is noted in the audit log. */
public interface Accounts {

    Optional<Account> byId(UUID id);

    /** By its name in any case. */
    Optional<Account> byName(AccountName name);

    /** All of them by their names. */
    List<Account> all();

    /** Whether somebody can log in who keeps the accounts. */
    boolean hasAdministrator();

    /** The stored hash of an account's password; none where it logs in elsewhere. */
    Optional<String> passwordHash(UUID id);

    /**
     * Makes an account; what belongs to nobody and is private by nature goes to the very first one, if that is an administrator.
     *
     * @param proof how it proves that it is itself
     * @return the one that is there already where it is for the same person that another service vouches for
     * @throws campcloth.figure.Refused where the name is taken or there is no role
     */
    Account make(AccountName name, Set<Role> roles, Proof proof);

    /** The account that another service vouches for; none where it has not been here yet. */
    Optional<Account> bySubject(Proof.Vouched vouched);

    /** Changes what an account may do. The last administrator who can log in stays one. */
    Change change(UUID id, long expectedVersion, Set<Role> roles, boolean disabled);

    /** Gives an account another password and ends its sessions; where somebody else made the password, its tokens as well. */
    void setPassword(UUID id, String hash, boolean oneTime);

    /** Keeps the same password under another hash. */
    void rehash(UUID id, String hash);

    /** How an account proves that it is itself. */
    sealed interface Proof {

        /** @param oneTime was made by somebody else, and has to be changed first */
        record Password(String hash, boolean oneTime) implements Proof {

            /** Hashes do not belong into logs. */
            @Override
            public String toString() {
                return "Password[...]";
            }
        }

        /** Another service vouches for it: OpenID Connect Core 1.0, section 2, issuer and subject together name a person for ever. */
        record Vouched(String issuer, String subject) implements Proof {}
    }

    /** What became of a change. */
    sealed interface Change {

        record Done(Account account) implements Change {}

        /** Somebody changed it in between. */
        record Stale(long actualVersion) implements Change {}

        record Missing() implements Change {}
    }
}
