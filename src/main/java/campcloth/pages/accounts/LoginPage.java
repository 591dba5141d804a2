package campcloth.pages.accounts;

import campcloth.access.Askers;
import campcloth.access.Logins;
import campcloth.access.Mode;
import campcloth.pages.LocalPath;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.List;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The form to log in. What it sends is taken at the door; here it comes back with what is wrong. */
@Controller
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
class LoginPage {

    private static final String FORM = "accounts/login";
    private static final int LONGEST_NAME = 100;

    /** What led somebody here who had been in, or was on the way in. */
    private static final List<String> WHY_HERE = List.of("failed", "out", "changed");

    private final Askers askers;
    private final boolean vouched;

    LoginPage(Askers askers, @Value("${campcloth.oidc-issuer:}") String issuer) {
        this.askers = askers;
        this.vouched = !issuer.isBlank();
    }

    /** Whoever is logged in is led on to where they wanted to go. */
    @GetMapping("/login")
    String form(@RequestParam(defaultValue = "/") String back, HttpServletRequest request, Model model) {
        if (askers.now().account().isPresent()) {
            return "redirect:" + LocalPath.of(back);
        }
        model.addAttribute("back", LocalPath.of(back));
        // these have no value, so they are no text that was typed
        WHY_HERE.stream()
                .filter(why -> request.getParameter(why) != null)
                .findFirst()
                .ifPresent(why -> model.addAttribute("said", why));
        return FORM;
    }

    /** Whether another service vouches for people as well. */
    @ModelAttribute("vouched")
    boolean vouched() {
        return vouched;
    }

    @PostMapping("/login")
    String notIn(
            @RequestParam(defaultValue = "/") String back,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        String typed = String.valueOf(request.getParameter("name"));
        model.addAttribute("back", LocalPath.of(back));
        model.addAttribute("name", typed.length() > LONGEST_NAME ? "" : typed);
        if (request.getAttribute(Logins.Outcome.class.getName()) instanceof Logins.Outcome.Waiting waiting) {
            long seconds = seconds(waiting.left());
            response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
            response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(seconds));
            model.addAttribute("waitSeconds", seconds);
        } else {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("wrong", true);
        }
        return FORM;
    }

    static long seconds(Duration left) {
        return Math.max(1, left.toSeconds() + 1);
    }
}
