package campcloth.rest;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Gives each request a name under which all its lines stand in the log, and tells it to whoever asked. A proxy in front may have
 * given it one already; only what can say nothing but a number is taken over, so that nobody writes into our log.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class RequestId extends OncePerRequestFilter {

    static final String HEADER = "X-Request-Id";
    static final String KEY = "requestId";

    private static final Pattern NUMBER = Pattern.compile("[0-9a-fA-F-]{16,64}");
    private static final String GIVEN = RequestId.class.getName();

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String id = request.getAttribute(GIVEN) instanceof String given ? given : id(request.getHeader(HEADER));
        request.setAttribute(GIVEN, id);
        response.setHeader(HEADER, id);
        MDC.put(KEY, id);
        try {
            chain.doFilter(request, response);
        } finally {
            MDC.remove(KEY);
        }
    }

    private static String id(@Nullable String told) {
        return told != null && NUMBER.matcher(told).matches()
                ? told
                : UUID.randomUUID().toString();
    }

    /** What is answered later or elsewhere keeps the name. */
    @Override
    protected boolean shouldNotFilterAsyncDispatch() {
        return false;
    }

    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }
}
