package campcloth.door;

import campcloth.access.TooOften;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import org.springframework.web.filter.OncePerRequestFilter;

/** Refuses what comes too often, before any work is done for it. */
final class LimitFilter extends OncePerRequestFilter {

    private final Limits limits;
    private final Denials denials;

    LimitFilter(Limits limits, Denials denials) {
        this.limits = limits;
        this.denials = denials;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return Paths.isLook(request);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<TooOften> refusal = limits.refusal(request, LoggedIn.now());
        if (refusal.isPresent()) {
            denials.tell(request, response, refusal.get());
            return;
        }
        chain.doFilter(request, response);
    }
}
