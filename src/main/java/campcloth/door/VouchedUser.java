package campcloth.door;

import campcloth.access.Account;
import java.util.List;
import org.springframework.security.oauth2.core.oidc.OidcIdToken;
import org.springframework.security.oauth2.core.oidc.user.DefaultOidcUser;

/** Somebody for whom the OpenID Connect provider vouches, with the account that is theirs. */
final class VouchedUser extends DefaultOidcUser {

    private static final long serialVersionUID = 1L;

    private final transient Account account;

    VouchedUser(OidcIdToken token, Account account) {
        super(List.of(), token);
        this.account = account;
    }

    Account account() {
        return account;
    }
}
