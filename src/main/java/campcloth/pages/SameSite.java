package campcloth.pages;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Forms are taken from our own pages only. A page of somebody else that the user's browser has open could send one here; browsers
 * say where a request comes from (Fetch Metadata; older ones in Origin), and what does not come from here is refused. What
 * carries neither is no browser and cannot have been led here by a page.
 */
@Component
class SameSite extends OncePerRequestFilter {

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final Set<String> OWN = Set.of("same-origin", "none");

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return READING.contains(request.getMethod()) || !PagePaths.isPage(request);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (isOurs(request)) {
            chain.doFilter(request, response);
            return;
        }
        response.setStatus(HttpStatus.FORBIDDEN.value());
        response.setContentType(MediaType.TEXT_PLAIN_VALUE);
        response.setCharacterEncoding(StandardCharsets.UTF_8);
        response.getWriter().write("This form was sent from another site. Open the page here and send it again.");
    }

    private static boolean isOurs(HttpServletRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        if (site != null) {
            return OWN.contains(site);
        }
        String origin = request.getHeader(HttpHeaders.ORIGIN);
        return origin == null || origin.equalsIgnoreCase(own(request));
    }

    private static @Nullable String own(HttpServletRequest request) {
        URI url = URI.create(request.getRequestURL().toString());
        return url.getScheme() + "://" + url.getAuthority();
    }
}
