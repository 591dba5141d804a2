package campcloth.rest;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Answers only under names of this machine: otherwise a page in the user's browser, whose own name was made to point here, could
 * read and change everything (DNS rebinding). More names go into {@code CAMPCLOTH_HOSTS}, separated by commas.
 */
@Component
@Order(HostCheck.PLACE)
class HostCheck extends OncePerRequestFilter {

    /** Before whatever looks at who asks. */
    static final int PLACE = Ordered.HIGHEST_PRECEDENCE + 10;

    private static final List<String> THIS_MACHINE = List.of("localhost", "127.0.0.1", "[::1]", "::1");

    private final List<String> more;
    private final ProblemWriter problems;

    HostCheck(@Value("${campcloth.hosts:}") List<String> more, ProblemWriter problems) {
        this.more =
                more.stream().map(name -> name.strip().toLowerCase(Locale.ROOT)).toList();
        this.problems = problems;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String name = request.getServerName().toLowerCase(Locale.ROOT);
        if (THIS_MACHINE.contains(name) || more.contains(name)) {
            chain.doFilter(request, response);
            return;
        }
        problems.write(
                response,
                Problems.problem(
                        HttpStatus.MISDIRECTED_REQUEST,
                        "unknown-host",
                        "Not under that name",
                        "This service answers as localhost; list other names of it in CAMPCLOTH_HOSTS."));
    }
}
