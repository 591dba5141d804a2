package campcloth.door;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.springframework.web.util.UriUtils;

/** Kinds of requests that the door treats alike. */
final class Paths {

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final List<String> FOR_PROGRAMS = List.of("/api", "/v3", "/actuator", "/error");
    private static final List<String> LOOK = List.of("/look", "/webjars");

    /** Where things stand that can be shared by a link. */
    private static final List<String> SHARED =
            List.of("/events", "/sheets", "/cloths", "/api/events", "/api/cutting-plans", "/api/cloths");

    /** What stands there in the place of an id and is none: lists, forms and questions, which no link shares. */
    private static final Set<String> NO_IDS =
            Set.of("new", "import", "compare", "sources", "completeness", "export", "alike", "comparison");

    private Paths() {}

    static boolean isForPrograms(HttpServletRequest request) {
        return isUnder(request, FOR_PROGRAMS);
    }

    static boolean isReading(HttpServletRequest request) {
        return READING.contains(request.getMethod());
    }

    static boolean isChangeByProgram(HttpServletRequest request) {
        return isForPrograms(request) && !isReading(request);
    }

    /** Styles, scripts and pictures, the same for everybody. */
    static boolean isLook(HttpServletRequest request) {
        return isUnder(request, LOOK);
    }

    /** Reading of one thing that is shared by a link, if the key is right; whether it is, the stores know. */
    static boolean isByLink(HttpServletRequest request) {
        return isReading(request)
                && SHARED.stream().anyMatch(start -> isOfOne(request.getRequestURI(), start + "/"))
                && !ShownKeys.in(request).isEmpty();
    }

    private static boolean isOfOne(String path, String start) {
        if (!path.startsWith(start)) {
            return false;
        }
        int end = path.indexOf('/', start.length());
        String id = end < 0 ? path.substring(start.length()) : path.substring(start.length(), end);
        return !id.isEmpty() && !NO_IDS.contains(id) && id.indexOf('%') < 0;
    }

    /** However the address was written: {@code /%6Cogin} is {@code /login} to what answers it, so it has to be the same here. */
    static boolean isUnder(HttpServletRequest request, List<String> starts) {
        String path = UriUtils.decode(request.getRequestURI(), StandardCharsets.UTF_8);
        return starts.stream().anyMatch(start -> path.equals(start) || path.startsWith(start + "/"));
    }
}
