package campcloth.access;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The tokens of the accounts. Made and revoked ones are noted in the audit log. */
public interface Tokens {

    /** As many as one account may have. */
    int MOST = 20;

    Duration LONGEST = Duration.ofDays(366);

    /**
     * Makes a token.
     *
     * @throws campcloth.figure.Refused where the name or the time cannot be used, or there are as many as may be
     */
    TokenSecret make(UUID account, String name, Duration lasts);

    /** Those of an account, newest first. */
    List<AccessToken> of(UUID account);

    /** Whether there was such a token of that account. */
    boolean revoke(UUID account, String tokenId);

    /** The account that a token speaks for, if it still does; the token is used now. */
    Optional<Account> use(TokenSecret secret);
}
