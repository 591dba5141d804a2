package campcloth.door;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.web.util.WebUtils;

/** The cookie in which a browser keeps by what it is known again; it is sent to the login alone, and opens nothing. */
final class BrowserMark {

    private static final String NAME = "KNOWN";
    private static final String PATH = "/login";

    /** After that long without a log-in the browser is one like any other. */
    private static final Duration KEPT = Duration.ofDays(365);

    private BrowserMark() {}

    static String in(HttpServletRequest request) {
        return Optional.ofNullable(WebUtils.getCookie(request, NAME))
                .map(Cookie::getValue)
                .orElse("");
    }

    static void keep(String mark, HttpServletRequest request, HttpServletResponse response) {
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                ResponseCookie.from(NAME, mark)
                        .path(PATH)
                        .maxAge(KEPT)
                        .httpOnly(true)
                        .secure(request.isSecure())
                        .sameSite("Strict")
                        .build()
                        .toString());
    }
}
