package campcloth.pages;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;

/** Which addresses are pages: all that are not for programs. */
final class PagePaths {

    private static final List<String> FOR_PROGRAMS = List.of("/api", "/v3", "/actuator", "/error");

    private PagePaths() {}

    /** Where an address failed before it reached its page, it is that address that counts. */
    static boolean isPage(HttpServletRequest request) {
        Object failed = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        String path = failed == null ? request.getRequestURI() : failed.toString();
        return FOR_PROGRAMS.stream().noneMatch(start -> path.equals(start) || path.startsWith(start + "/"));
    }
}
