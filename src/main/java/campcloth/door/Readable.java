package campcloth.door;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import org.springframework.security.authentication.InsufficientAuthenticationException;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * The first to read forms, because their tokens are looked for before any controller: what cannot be read is told on a page as it is
 * elsewhere. Files of strangers are not read at all; they have no form that sends one.
 */
final class Readable extends OncePerRequestFilter {

    private final Denials denials;

    Readable(Denials denials) {
        this.denials = denials;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return Paths.isForPrograms(request) || Paths.isReading(request);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (hasFiles(request) && LoggedIn.now() == null) {
            denials.commence(request, response, new InsufficientAuthenticationException("a file of a stranger"));
            return;
        }
        try {
            request.getParameterMap();
        } catch (IllegalStateException unreadable) {
            denials.tell(request, response, unreadable);
            return;
        }
        chain.doFilter(request, response);
    }

    private static boolean hasFiles(HttpServletRequest request) {
        String type = String.valueOf(request.getContentType());
        return type.toLowerCase(Locale.ROOT).startsWith("multipart/");
    }
}
