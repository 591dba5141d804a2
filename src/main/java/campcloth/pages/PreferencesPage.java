package campcloth.pages;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The reader's choice of units, kept in the browser alone. */
@Controller
class PreferencesPage {

    private static final Duration KEPT = Duration.ofDays(365);

    @PostMapping("/preferences")
    String choose(
            @RequestParam(defaultValue = "metric") String units,
            @RequestParam(defaultValue = "/") String back,
            HttpServletResponse response) {
        Units chosen = ReadersUnits.of(units).orElse(Units.METRIC);
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                ResponseCookie.from(ReadersUnits.COOKIE, chosen.key())
                        .path("/")
                        .maxAge(KEPT)
                        .httpOnly(true)
                        .sameSite("Lax")
                        .build()
                        .toString());
        return "redirect:" + LocalPath.of(back);
    }
}
