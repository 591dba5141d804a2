package campcloth.door;

import campcloth.access.Account;
import campcloth.access.NotAllowed;
import campcloth.access.NotLoggedIn;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.web.servlet.HandlerExceptionResolver;

/** How it is told that somebody may not: programs get a problem, people are led to the login or told on a page. */
final class Denials implements AuthenticationEntryPoint, AccessDeniedHandler {

    /** Where a page tells what a filter refused; the refusal stands in an attribute of that name. */
    private static final String REFUSED_PAGE = "/refused";

    private static final String HTMX = "HX-Request";
    private static final String HTMX_REDIRECT = "HX-Redirect";
    private static final String CHOOSE_PASSWORD = "/account/password";

    private final HandlerExceptionResolver problems;

    /** @param problems the one that tells what controllers refuse */
    Denials(HandlerExceptionResolver problems) {
        this.problems = problems;
    }

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException unknown)
            throws IOException, ServletException {
        if (Paths.isForPrograms(request)) {
            tell(request, response, new NotLoggedIn(BearerFilter.shows(request)));
        } else if (request.getHeader(HTMX) != null) {
            response.setStatus(HttpStatus.UNAUTHORIZED.value());
            response.setHeader(HTMX_REDIRECT, "/login");
        } else {
            response.setStatus(HttpStatus.SEE_OTHER.value());
            response.setHeader(HttpHeaders.LOCATION, "/login" + back(request));
        }
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException denied)
            throws IOException, ServletException {
        Account account = LoggedIn.now();
        if (denied instanceof CsrfException) {
            tell(
                    request,
                    response,
                    new NotAllowed(
                            "The form is too old or was not opened here. Open the page again and send it once more."));
        } else if (account != null && account.oneTime() && !Paths.isForPrograms(request)) {
            response.sendRedirect(CHOOSE_PASSWORD);
        } else {
            tell(
                    request,
                    response,
                    new NotAllowed("Your account may not do this. An administrator can give it the role that may."));
        }
    }

    void tell(HttpServletRequest request, HttpServletResponse response, RuntimeException refusal)
            throws IOException, ServletException {
        if (Paths.isForPrograms(request)) {
            problems.resolveException(request, response, null, refusal);
        } else {
            request.setAttribute(RuntimeException.class.getName(), refusal);
            request.getRequestDispatcher(REFUSED_PAGE).forward(request, response);
        }
    }

    /** The page that was asked for, to come back to. */
    private static String back(HttpServletRequest request) {
        String query = request.getQueryString();
        String asked = request.getRequestURI() + (query == null ? "" : "?" + query);
        return Paths.isReading(request) && !asked.equals("/")
                ? "?back=" + URLEncoder.encode(asked, StandardCharsets.UTF_8)
                : "";
    }
}
