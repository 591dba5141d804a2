package campcloth.pages;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * What a browser is told about everything that comes from here: styles, scripts and pictures from this server alone, nothing
 * written into the page runs, nobody may frame it, no address leaks to others, and nothing between keeps what is answered to one for
 * another. What is the same for everybody says otherwise itself.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class PageHeaders extends OncePerRequestFilter {

    static final String CONTENT_SECURITY_POLICY =
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; "
                    + "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.setHeader("Content-Security-Policy", CONTENT_SECURITY_POLICY);
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setHeader("Referrer-Policy", "same-origin");
        response.setHeader("Cross-Origin-Opener-Policy", "same-origin");
        response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-cache, private");
        chain.doFilter(request, response);
    }
}
