package campcloth.door;

import campcloth.access.Account;
import campcloth.access.Visitor;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.web.filter.OncePerRequestFilter;

/** Tells pages who looks at them. */
final class VisitorFilter extends OncePerRequestFilter {

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (!Paths.isForPrograms(request) && !Paths.isLook(request)) {
            Account account = LoggedIn.now();
            request.setAttribute(Visitor.ATTRIBUTE, account == null ? Visitor.STRANGER : Visitor.of(account));
        }
        chain.doFilter(request, response);
    }
}
