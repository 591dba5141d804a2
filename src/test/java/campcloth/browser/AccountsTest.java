package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.access.Role;
import campcloth.journey.HostedAccounts;
import campcloth.journey.HostedService;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What people meet where there are accounts: the login, their own account, and those of others. */
@ExtendWith(BrowserThere.class)
@HostedService
class AccountsTest {

    private static final String NEXT_PASSWORD = "nine grey geese at dawn";

    @LocalServerPort
    private int port;

    @Autowired
    private HostedAccounts known;

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE", "PHONE_WITHOUT_SCRIPTS"})
    void aStrangerLogsInAndComesBack(Visit visit) {
        String name = maker("road", visit);
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/events");
            assertThat(visitor.path()).startsWith("/login?back=");
            visitor.holds();
            visitor.logIn(name, "not the password at all");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("do not belong together");
            assertThat(page.getByLabel("Name")).hasValue(name);
            assertThat(page.getByLabel("Password")).hasValue("");
            assertThat(page.getByLabel("Password")).isFocused();
            visitor.holds();
            visitor.logIn(name, HostedAccounts.PASSWORD);
            assertThat(visitor.heading("Events")).isVisible();
            assertThat(visitor.path()).isEqualTo("/events");
            assertThat(visitor.link("My account, " + name)).hasText(name);
            assertThat(visitor.link("Accounts")).hasCount(0);
            visitor.holds();
            visitor.follow(visitor.button("Log out"));
            assertThat(page.getByRole(AriaRole.STATUS)).hasText("You are logged out.");
            visitor.holds();
            visitor.at("/events");
            assertThat(visitor.path()).startsWith("/login");
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE", "PHONE_WITHOUT_SCRIPTS"})
    void oneKeepsTokensAndAPassword(Visit visit) {
        String name = maker("own", visit);
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/account");
            visitor.logIn(name, HostedAccounts.PASSWORD);
            assertThat(visitor.heading("My account")).isVisible();
            visitor.holds();
            page.getByLabel("For how many days").fill("400");
            visitor.follow(visitor.button("Make a token"));
            assertThat(page.locator("#name-wrong, #days-wrong").first()).isVisible();
            visitor.holds();
            page.getByLabel("What it is for").fill("spreadsheet");
            page.getByLabel("For how many days").fill("30");
            visitor.follow(visitor.button("Make a token"));
            Locator secret = page.locator(".accounts-once code");
            assertThat(secret).isVisible();
            assertThat(page.getByLabel("What it is for")).hasValue("");
            assertThat(page.locator(".accounts-once")).isFocused();
            String text = secret.textContent();
            visitor.holds();
            if (visit.scripts()) {
                visitor.button("Copy the token").click();
                assertThat(page.getByRole(AriaRole.STATUS)).hasText("Copied.");
            }
            visitor.at("/account");
            assertThat(page.getByRole(AriaRole.ROWHEADER)).hasText("spreadsheet");
            assertThat(page.content()).doesNotContain(text);
            visitor.holds();
            visitor.follow(visitor.button("Revoke spreadsheet"));
            assertThat(page.getByRole(AriaRole.ROWHEADER)).hasCount(0);
            visitor.follow(visitor.link("Change the password"));
            visitor.holds();
            choosePassword(visitor, "not what it is", NEXT_PASSWORD);
            assertThat(page.locator("#now-wrong")).hasText("This is not the password of your account");
            visitor.holds();
            choosePassword(visitor, HostedAccounts.PASSWORD, NEXT_PASSWORD);
            assertThat(page.getByRole(AriaRole.STATUS)).containsText("The password is changed");
            visitor.logIn(name, HostedAccounts.PASSWORD);
            assertThat(page.getByRole(AriaRole.ALERT)).isVisible();
            visitor.logIn(name, NEXT_PASSWORD);
            assertThat(visitor.link("My account, " + name)).isVisible();
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE", "PHONE_WITHOUT_SCRIPTS"})
    void anAdministratorKeepsTheAccounts(Visit visit) {
        String name = "made-" + lower(visit);
        try (Visitor visitor = new Visitor(visit, port);
                Visitor owner = new Visitor(visit, port)) {
            Page page = visitor.at("/");
            visitor.logIn(HostedAccounts.FIRST, HostedAccounts.PASSWORD);
            visitor.follow(visitor.link("Accounts"));
            visitor.holds();
            page.getByLabel("Name").fill("No name!");
            visitor.follow(visitor.button("Make an account"));
            assertThat(page.locator("#name-wrong")).isVisible();
            visitor.holds();
            page.getByLabel("Maker").uncheck();
            visitor.follow(visitor.button("Make an account"));
            assertThat(page.getByText("Tick one at least").first()).isVisible();
            page.getByLabel("Maker").check();
            page.getByLabel("Name").fill(name);
            visitor.follow(visitor.button("Make an account"));
            assertThat(visitor.heading("A one-time password")).isVisible();
            visitor.holds();
            String once = page.locator(".accounts-once code").textContent();

            owner.at("/events");
            owner.logIn(name, once);
            assertThat(owner.heading("Change the password")).isVisible();
            owner.holds();
            choosePassword(owner, once, NEXT_PASSWORD);
            owner.logIn(name, NEXT_PASSWORD);
            assertThat(owner.link("My account, " + name)).isVisible();

            visitor.follow(visitor.link("All accounts"));
            visitor.follow(visitor.link(name));
            visitor.holds();
            page.getByLabel("Marshal").check();
            visitor.follow(visitor.button("Keep"));
            assertThat(page.getByRole(AriaRole.STATUS)).hasText("Done.");
            assertThat(page.getByLabel("Marshal")).isChecked();
            owner.at("/account");
            assertThat(owner.page().getByRole(AriaRole.DEFINITION).nth(1)).hasText("Maker, Marshal");
            page.getByLabel("Closed").check();
            visitor.follow(visitor.button("Keep"));
            visitor.follow(visitor.link("All accounts"));
            assertThat(page.getByRole(AriaRole.ROW).filter(new Locator.FilterOptions().setHas(visitor.link(name))))
                    .containsText("closed");
            visitor.holds();
            owner.at("/account");
            assertThat(owner.path()).startsWith("/login");
            visitor.follow(visitor.link("Audit log"));
            assertThat(page.getByRole(AriaRole.TABLE)).containsText(name);
            visitor.holds();
        }
    }

    /** A maker of that visit, who has the password of all. */
    private String maker(String what, Visit visit) {
        return known.account(what + "-" + lower(visit), Set.of(Role.MAKER))
                .name()
                .text();
    }

    private static String lower(Visit visit) {
        return visit.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static void choosePassword(Visitor visitor, String now, String next) {
        Page page = visitor.page();
        page.getByLabel("Password that you have now").fill(now);
        page.getByLabel("New password", new Page.GetByLabelOptions().setExact(true))
                .fill(next);
        page.getByLabel("New password once more").fill(next);
        visitor.follow(visitor.button("Change the password"));
    }
}
