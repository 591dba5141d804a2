package campcloth.pages;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;
import org.springframework.web.util.WebUtils;

/**
 * Which units a reader sees, by a cookie, and in which the numbers of a request were typed, by its own parameter: an address that is
 * passed on keeps its meaning whatever the next reader has chosen.
 */
final class ReadersUnits {

    static final String COOKIE = "units";

    /** Units of the numbers in the same form or address; metric where it is left out. */
    static final String TYPED_IN = "typedIn";

    private ReadersUnits() {}

    static Units shown(HttpServletRequest request) {
        return Optional.ofNullable(WebUtils.getCookie(request, COOKIE))
                .map(Cookie::getValue)
                .flatMap(ReadersUnits::of)
                .orElse(Units.METRIC);
    }

    /** Units of the numbers in the request that this thread answers. */
    static Units typed() {
        return Optional.ofNullable(request().getParameter(TYPED_IN))
                .flatMap(ReadersUnits::of)
                .orElse(Units.METRIC);
    }

    static Units shown() {
        return shown(request());
    }

    static Optional<Units> of(String key) {
        return Arrays.stream(Units.values())
                .filter(units -> units.key().equals(key.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    private static HttpServletRequest request() {
        return ((ServletRequestAttributes) RequestContextHolder.currentRequestAttributes()).getRequest();
    }
}
