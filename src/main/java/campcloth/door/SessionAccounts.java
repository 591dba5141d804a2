package campcloth.door;

import campcloth.access.Account;
import campcloth.access.Accounts;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.DeferredSecurityContext;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.oauth2.client.authentication.OAuth2AuthenticationToken;
import org.springframework.security.web.context.HttpRequestResponseHolder;
import org.springframework.security.web.context.SecurityContextRepository;

/**
 * Remembers in the session which account is logged in, and nothing else of it: what it may do is looked up in each request, so that a
 * change holds at once and on every instance. A session is over when the account is disabled, its stamp has risen, nothing was
 * asked for half a day (project choice), or after 30 days (what NIST SP 800-63B-4 says for a single factor; from memory).
 *
 * <p>Requests of programs that change something do not count as logged in by a session; they show a token. So no page of somebody else
 * can have a browser send them.
 */
final class SessionAccounts implements SecurityContextRepository {

    private static final String ACCOUNT = "account";
    private static final String STAMP = "stamp";
    private static final Duration IDLE = Duration.ofHours(12);
    private static final Duration LONGEST = Duration.ofDays(30);

    private final Accounts accounts;
    private final Clock clock;

    SessionAccounts(Accounts accounts, Clock clock) {
        this.accounts = accounts;
        this.clock = clock;
    }

    @Override
    @Deprecated
    public SecurityContext loadContext(HttpRequestResponseHolder holder) {
        return loadDeferredContext(holder.getRequest()).get();
    }

    @Override
    public DeferredSecurityContext loadDeferredContext(HttpServletRequest request) {
        return new Later(() -> context(request));
    }

    @Override
    public void saveContext(SecurityContext context, HttpServletRequest request, HttpServletResponse response) {
        Account in = in(context.getAuthentication());
        if (in == null) {
            HttpSession session = request.getSession(false);
            if (session != null) {
                session.removeAttribute(ACCOUNT);
            }
            return;
        }
        HttpSession session = request.getSession();
        session.setMaxInactiveInterval((int) IDLE.toSeconds());
        session.setAttribute(ACCOUNT, in.id().toString());
        session.setAttribute(STAMP, Long.toString(in.stamp()));
    }

    private static @Nullable Account in(@Nullable Authentication authentication) {
        if (authentication instanceof LoggedIn in) {
            return in.account();
        }
        return authentication instanceof OAuth2AuthenticationToken token
                        && token.getPrincipal() instanceof VouchedUser user
                ? user.account()
                : null;
    }

    @Override
    public boolean containsContext(HttpServletRequest request) {
        return account(request).isPresent();
    }

    private SecurityContext context(HttpServletRequest request) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        account(request).map(LoggedIn::new).ifPresent((Authentication in) -> context.setAuthentication(in));
        return context;
    }

    private Optional<Account> account(HttpServletRequest request) {
        HttpSession session =
                Paths.isLook(request) || Paths.isChangeByProgram(request) ? null : request.getSession(false);
        if (session == null || isOver(session)) {
            return Optional.empty();
        }
        Object stamp = session.getAttribute(STAMP);
        return Optional.ofNullable(session.getAttribute(ACCOUNT))
                .flatMap(id -> accounts.byId(UUID.fromString(id.toString())))
                .filter(account ->
                        !account.disabled() && Long.toString(account.stamp()).equals(stamp));
    }

    private boolean isOver(HttpSession session) {
        return Instant.ofEpochMilli(session.getCreationTime()).plus(LONGEST).isBefore(clock.instant());
    }

    /** A context that is looked up when somebody asks for it, and then once. */
    private static final class Later implements DeferredSecurityContext {

        private final Supplier<SecurityContext> lookedUp;
        private @Nullable SecurityContext context;

        Later(Supplier<SecurityContext> lookedUp) {
            this.lookedUp = lookedUp;
        }

        @Override
        public SecurityContext get() {
            SecurityContext found = context;
            if (found == null) {
                found = lookedUp.get();
                context = found;
            }
            return found;
        }

        /** Looked up anew for every request, so never one that was just made. */
        @Override
        public boolean isGenerated() {
            return false;
        }
    }
}
