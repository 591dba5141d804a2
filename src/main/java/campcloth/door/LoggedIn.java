package campcloth.door;

import campcloth.access.Account;
import campcloth.access.Role;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.authority.AuthorityUtils;
import org.springframework.security.core.context.SecurityContextHolder;

/**
 * An account that has proved itself, as the framework sees it. While its password is one that somebody else made, it has no role yet: all
 * it may do is to choose its own.
 */
final class LoggedIn extends AbstractAuthenticationToken {

    private static final long serialVersionUID = 1L;
    private static final String ROLE = "ROLE_";

    private final transient Account account;

    LoggedIn(Account account) {
        super(AuthorityUtils.createAuthorityList(account.oneTime() ? List.of() : roles(account)));
        this.account = account;
        setAuthenticated(true);
    }

    /** Who is logged in on this thread. */
    static @Nullable Account now() {
        return SecurityContextHolder.getContext().getAuthentication() instanceof LoggedIn in ? in.account : null;
    }

    Account account() {
        return account;
    }

    @Override
    public String getCredentials() {
        return "";
    }

    @Override
    public String getPrincipal() {
        return account.id().toString();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LoggedIn in && in.account.equals(account);
    }

    @Override
    public int hashCode() {
        return Objects.hashCode(account);
    }

    private static List<String> roles(Account account) {
        return account.roles().stream().map(Role::name).map(ROLE::concat).toList();
    }
}
