package campcloth.door;

import campcloth.access.Account;
import campcloth.access.Accounts.Proof;
import campcloth.access.Asker;
import campcloth.access.Askers;
import campcloth.access.Vouching;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.security.oauth2.client.oidc.userinfo.OidcUserRequest;
import org.springframework.security.oauth2.client.userinfo.OAuth2UserService;
import org.springframework.security.oauth2.core.OAuth2AuthenticationException;
import org.springframework.security.oauth2.core.OAuth2ErrorCodes;
import org.springframework.security.oauth2.core.oidc.OidcIdToken;
import org.springframework.security.oauth2.core.oidc.user.OidcUser;

/** Finds or makes the account of whoever comes with an identity token that the framework has checked. */
final class VouchedUsers implements OAuth2UserService<OidcUserRequest, OidcUser> {

    private final Vouching vouching;
    private final Askers askers;
    private final Set<String> administrators;

    VouchedUsers(Vouching vouching, Askers askers, HostedSettings settings) {
        this.vouching = vouching;
        this.askers = askers;
        this.administrators = Arrays.stream(settings.admins().split(","))
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.toSet());
    }

    @Override
    public OidcUser loadUser(OidcUserRequest request) {
        OidcIdToken token = request.getIdToken();
        Proof.Vouched vouched = new Proof.Vouched(String.valueOf(token.getIssuer()), token.getSubject());
        String wished = Optional.ofNullable(token.getPreferredUsername())
                .or(() -> Optional.ofNullable(token.getEmail()))
                .orElse("");
        Account account = askers.as(Asker.LOCAL, () -> vouching.account(vouched, wished, isAdministrator(token)));
        if (account.disabled()) {
            throw new OAuth2AuthenticationException(OAuth2ErrorCodes.ACCESS_DENIED);
        }
        return new VouchedUser(token, account);
    }

    /**
     * A subject is compared as it is written (OpenID Connect Core 1.0, section 2: case sensitive), an address of mail in any case, and only
     * where the provider has tried it.
     */
    private boolean isAdministrator(OidcIdToken token) {
        String mail = Boolean.TRUE.equals(token.getEmailVerified()) ? String.valueOf(token.getEmail()) : "";
        return administrators.contains(token.getSubject())
                || administrators.stream().anyMatch(mail::equalsIgnoreCase);
    }
}
