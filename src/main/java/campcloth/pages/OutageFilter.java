package campcloth.pages;

import campcloth.outage.Outages;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatusCode;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.servlet.HandlerExceptionResolver;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.ViewResolver;

/**
 * Outside of all other filters: an outage that one of them meets, as where a session or a token is looked up, is told as one that a
 * page or a controller meets. The usual way for failures leads through the same filters again, which would fail again.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class OutageFilter extends OncePerRequestFilter {

    private final Outages outages;
    private final List<HandlerExceptionResolver> problems;
    private final ViewResolver views;

    OutageFilter(
            Outages outages,
            List<HandlerExceptionResolver> problems,
            @Qualifier("thymeleafViewResolver") ViewResolver views) {
        this.outages = outages;
        this.problems = problems;
        this.views = views;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (ServletException | IOException | RuntimeException failure) {
            if (response.isCommitted() || outages.of(failure).isEmpty()) {
                throw failure;
            }
            response.resetBuffer();
            tell(request, response, failure);
        }
    }

    private void tell(HttpServletRequest request, HttpServletResponse response, Exception failure)
            throws ServletException {
        ModelAndView told = problems.stream()
                .map(resolver -> resolver.resolveException(request, response, null, failure))
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow(() -> new ServletException(failure));
        String name = told.getViewName();
        if (name == null) {
            return;
        }
        try {
            HttpStatusCode status = Objects.requireNonNull(told.getStatus());
            View page = Objects.requireNonNull(views.resolveViewName(name, Locale.ENGLISH));
            response.setStatus(status.value());
            page.render(told.getModel(), request, response);
        } catch (Exception unprintable) {
            throw new ServletException(unprintable);
        }
    }
}
