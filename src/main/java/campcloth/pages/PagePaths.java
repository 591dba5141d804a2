package campcloth.pages;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;

/** Which addresses are pages: all that are not for programs. */
final class PagePaths {

    private static final List<String> FOR_PROGRAMS = List.of("/api", "/v3", "/actuator", "/error");

    private PagePaths() {}

    static boolean isPage(HttpServletRequest request) {
        String path = request.getRequestURI();
        return FOR_PROGRAMS.stream().noneMatch(start -> path.equals(start) || path.startsWith(start + "/"));
    }
}
