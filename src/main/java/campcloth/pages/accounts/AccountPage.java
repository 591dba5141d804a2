package campcloth.pages.accounts;

import campcloth.access.Account;
import campcloth.access.Accounts;
import campcloth.access.Mode;
import campcloth.access.TokenSecret;
import campcloth.access.Tokens;
import campcloth.pages.FormErrors;
import campcloth.pages.NotHere;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** One's own account: what it may do, and its tokens. */
@Controller
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
class AccountPage {

    private static final String PAGE = "accounts/mine";

    /** Secrets that are shown once are kept by no browser. */
    static final String NOWHERE = "no-store";

    private final Me me;
    private final Accounts accounts;
    private final Tokens tokens;
    private final Clock clock;

    AccountPage(Me me, Accounts accounts, Tokens tokens, Clock clock) {
        this.me = me;
        this.accounts = accounts;
        this.tokens = tokens;
        this.clock = clock;
    }

    @GetMapping("/account")
    String shown(@ModelAttribute("form") TokenForm form, Model model) {
        return page(me.account(), model);
    }

    @PostMapping("/account/tokens")
    String make(
            @ModelAttribute("form") TokenForm form, BindingResult errors, Model model, HttpServletResponse response) {
        Account account = me.account();
        Optional<TokenSecret> made = errors.hasErrors()
                ? Optional.empty()
                : FormErrors.caught(
                        errors,
                        () -> tokens.make(
                                account.id(),
                                Objects.requireNonNullElse(form.name, ""),
                                Duration.ofDays(Objects.requireNonNullElse(form.days, 0))));
        if (made.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        response.setHeader(HttpHeaders.CACHE_CONTROL, NOWHERE);
        made.ifPresent(secret -> {
            model.addAttribute("secret", secret.text());
            form.name = null;
        });
        return page(account, model);
    }

    @PostMapping("/account/tokens/{id}/revoke")
    String revoke(@PathVariable String id) {
        if (!tokens.revoke(me.account().id(), id)) {
            throw new NotHere("token");
        }
        return "redirect:/account";
    }

    private String page(Account account, Model model) {
        model.addAttribute("account", account);
        model.addAttribute("hasPassword", accounts.passwordHash(account.id()).isPresent());
        model.addAttribute("tokens", tokens.of(account.id()));
        model.addAttribute("now", clock.instant());
        return PAGE;
    }
}
