package campcloth.door;

import campcloth.access.Account;
import campcloth.access.TokenSecret;
import campcloth.access.Tokens;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Programs show a token (RFC 6750); only under {@code /api}. Whoever shows one that is none is a stranger, session or not. */
final class BearerFilter extends OncePerRequestFilter {

    private static final String SCHEME = "Bearer ";

    private final Tokens tokens;

    BearerFilter(Tokens tokens) {
        this.tokens = tokens;
    }

    static boolean shows(HttpServletRequest request) {
        return request.getHeader(HttpHeaders.AUTHORIZATION) != null;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !Paths.isForPrograms(request) || !shows(request);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        account(request.getHeader(HttpHeaders.AUTHORIZATION)).map(LoggedIn::new).ifPresent(context::setAuthentication);
        SecurityContextHolder.setContext(context);
        chain.doFilter(request, response);
    }

    private Optional<Account> account(@Nullable String shown) {
        if (shown == null || !shown.regionMatches(true, 0, SCHEME, 0, SCHEME.length())) {
            return Optional.empty();
        }
        return TokenSecret.in(shown.substring(SCHEME.length()).strip()).flatMap(tokens::use);
    }
}
