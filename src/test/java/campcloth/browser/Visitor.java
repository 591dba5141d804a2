package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.util.ArrayList;
import java.util.List;

/** Somebody at a page, who complains where the console does, where a dialog opens, and where anything is asked from another server. */
final class Visitor implements AutoCloseable {

    private final BrowserContext context;
    private final Page page;
    private final Visit visit;
    private final String server;
    private final List<String> complaints = new ArrayList<>();

    Visitor(Visit visit, int port) {
        this.visit = visit;
        this.server = "http://localhost:" + port;
        this.context = Browsers.visitor(visit);
        this.page = context.newPage();
        page.onConsoleMessage(message -> {
            if (!isExpected(message.text())) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.onDialog(dialog -> {
            complaints.add("dialog: " + dialog.message());
            dialog.dismiss();
        });
        page.onRequest(request -> {
            if (!request.url().startsWith(server + "/")) {
                complaints.add(request.url());
            }
        });
    }

    /**
     * A refusal or a conflict answers with a page; Chromium notes its status, nothing else. A newer search takes the place of one under
     * way; htmx notes both of these, and what fails in earnest besides. Whoever types before a page has come to rest stays in their field.
     */
    private static boolean isExpected(String message) {
        return message.contains("the server responded with a status of 4")
                || message.startsWith("htmx:sendAbort,")
                || message.startsWith("htmx:afterRequest,")
                || message.startsWith(
                        "Autofocus processing was blocked because a document already has a focused element");
    }

    Page page() {
        return page;
    }

    Page at(String path) {
        page.navigate(server + path);
        return page;
    }

    Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    Locator link(String name) {
        return page.getByRole(
                AriaRole.LINK, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    Locator heading(String name) {
        return page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName(name));
    }

    /** Where the page is now, without the server. */
    String path() {
        return page.url().substring(server.length());
    }

    /** Waits until the page is there, as where a form that was sent leads to. */
    void comesTo(String path) {
        PlaywrightAssertions.assertThat(page).hasURL(server + path);
    }

    /** Fills in the login that is shown, and sends it. */
    void logIn(String name, String password) {
        page.getByLabel("Name").fill(name);
        page.getByLabel("Password").fill(password);
        button("Log in").click();
    }

    /** The page as it stands is usable by everybody. */
    void holds() {
        visit.holds(page);
    }

    @Override
    public void close() {
        context.close();
        assertThat(complaints).isEmpty();
    }
}
