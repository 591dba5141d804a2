package campcloth.pages.accounts;

import campcloth.access.Account;
import campcloth.access.Logins;
import campcloth.access.Mode;
import campcloth.access.Passwords;
import campcloth.pages.FormErrors;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

/** Changing one's own password. All that is logged in under the account has to log in anew then, this browser too. */
@Controller
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
class PasswordPage {

    private static final String FORM = "accounts/password";

    private final Me me;
    private final Logins logins;

    PasswordPage(Me me, Logins logins) {
        this.me = me;
        this.logins = logins;
    }

    @GetMapping("/account/password")
    String form(@ModelAttribute("form") PasswordForm form, Model model) {
        return page(model);
    }

    @PostMapping("/account/password")
    String change(
            @ModelAttribute("form") PasswordForm form,
            BindingResult errors,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Account account = me.account();
        String next = PasswordForm.typed(request, "next");
        if (!next.equals(PasswordForm.typed(request, "again"))) {
            errors.rejectValue("again", "accounts.password.differs");
        } else if (FormErrors.caught(errors, () -> checked(account, next)).isPresent()) {
            Logins.Outcome outcome = logins.confirmed(account, PasswordForm.typed(request, "now"));
            if (outcome instanceof Logins.Outcome.In) {
                logins.choose(account, next, "next");
                return "redirect:/login?changed";
            }
            if (outcome instanceof Logins.Outcome.Waiting waiting) {
                long seconds = LoginPage.seconds(waiting.left());
                response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(seconds));
                errors.rejectValue("now", "accounts.login.wait", new Object[] {seconds}, "");
                response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
                return page(model);
            }
            errors.rejectValue("now", "accounts.password.wrong");
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return page(model);
    }

    private static Boolean checked(Account account, String next) {
        Passwords.check(account.name(), next, "next");
        return true;
    }

    private String page(Model model) {
        Account account = me.account();
        model.addAttribute("least", Passwords.LEAST);
        model.addAttribute("whose", account.name().text());
        model.addAttribute("oneTime", account.oneTime());
        return FORM;
    }
}
