package campcloth.door;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * The first to read forms, because their tokens are looked for before any controller: what cannot be read is told on a page as it is
 * elsewhere.
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
        try {
            request.getParameterMap();
        } catch (IllegalStateException unreadable) {
            denials.tell(request, response, unreadable);
            return;
        }
        chain.doFilter(request, response);
    }
}
