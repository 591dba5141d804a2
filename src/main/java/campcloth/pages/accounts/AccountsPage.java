package campcloth.pages.accounts;

import campcloth.access.Account;
import campcloth.access.AccountKeeping;
import campcloth.access.AccountName;
import campcloth.access.Accounts;
import campcloth.access.Mode;
import campcloth.pages.FormErrors;
import campcloth.pages.NotHere;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
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
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The accounts, for administrators. */
@Controller
@ConditionalOnProperty(name = Mode.SETTING, havingValue = "hosted")
class AccountsPage {

    private static final String LIST = "accounts/list";
    private static final String ONE = "accounts/one";

    private final Accounts accounts;
    private final AccountKeeping keeping;

    AccountsPage(Accounts accounts, AccountKeeping keeping) {
        this.accounts = accounts;
        this.keeping = keeping;
    }

    @GetMapping("/accounts")
    String list(@ModelAttribute("form") AccountForm form, Model model) {
        form.maker = true;
        return page(model);
    }

    private String page(Model model) {
        model.addAttribute("accounts", accounts.all());
        return LIST;
    }

    @PostMapping("/accounts")
    String make(
            @ModelAttribute("form") AccountForm form, BindingResult errors, Model model, HttpServletResponse response) {
        mayDoSomething(form, errors);
        Optional<AccountKeeping.Handed> made = errors.hasErrors()
                ? Optional.empty()
                : FormErrors.caught(
                        errors,
                        () -> keeping.make(new AccountName(Objects.requireNonNullElse(form.name, "")), form.roles()));
        if (made.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(model);
        }
        return handed(made.get(), model, response);
    }

    @GetMapping("/accounts/{id}")
    String one(@PathVariable String id, HttpServletRequest request, Model model) {
        Account account = account(id);
        model.addAttribute("done", request.getParameter("done") != null);
        model.addAttribute("form", AccountForm.of(account));
        return one(account, model);
    }

    @PostMapping("/accounts/{id}")
    String change(
            @PathVariable String id,
            @ModelAttribute("form") AccountForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Account account = account(id);
        mayDoSomething(form, errors);
        long version = Objects.requireNonNullElse(form.version, -1L);
        Optional<Accounts.Change> change = errors.hasErrors()
                ? Optional.empty()
                : FormErrors.caught(
                        errors,
                        AccountsPage::field,
                        () -> accounts.change(account.id(), version, form.roles(), form.disabled));
        if (change.isPresent() && change.get() instanceof Accounts.Change.Done) {
            return done(id);
        }
        if (change.isPresent()) {
            errors.reject("accounts.stale");
        }
        response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        return one(account, model);
    }

    @PostMapping("/accounts/{id}/unlock")
    String unlock(@PathVariable String id) {
        keeping.unlock(account(id));
        return done(id);
    }

    @PostMapping("/accounts/{id}/password")
    String reset(@PathVariable String id, Model model, HttpServletResponse response) {
        return handed(keeping.reset(account(id)), model, response);
    }

    private static void mayDoSomething(AccountForm form, BindingResult errors) {
        if (form.roles().isEmpty()) {
            errors.rejectValue("maker", "accounts.roles.none");
        }
    }

    /** Where the form has what the core refuses: it refuses roles where nobody would be left who keeps the accounts. */
    private static String field(String path) {
        return "roles".equals(path) ? "administrator" : path;
    }

    /** Back to the account, which says that it is done. */
    private static String done(String id) {
        return "redirect:/accounts/" + id + "?done";
    }

    private static String handed(AccountKeeping.Handed handed, Model model, HttpServletResponse response) {
        response.setHeader(HttpHeaders.CACHE_CONTROL, AccountPage.NOWHERE);
        model.addAttribute("account", handed.account());
        model.addAttribute("password", handed.oneTimePassword());
        model.addAttribute(
                "loginAddress",
                ServletUriComponentsBuilder.fromCurrentContextPath()
                        .path("/login")
                        .toUriString());
        return "accounts/handed";
    }

    private String one(Account account, Model model) {
        model.addAttribute("account", account);
        model.addAttribute("hasPassword", accounts.passwordHash(account.id()).isPresent());
        return ONE;
    }

    private Account account(String id) {
        try {
            return accounts.byId(UUID.fromString(id)).orElseThrow(() -> new NotHere("account"));
        } catch (IllegalArgumentException none) {
            throw new NotHere("account");
        }
    }
}
