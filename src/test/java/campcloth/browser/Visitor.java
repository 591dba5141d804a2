package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.util.ArrayList;
import java.util.List;

/**
 * Somebody at a page, who complains where the console does, where a dialog opens, and where anything is asked from another server. A click
 * is over before the page that it leads to is there: {@link #follow} goes to that page, {@link #rests} waits for what a script puts in.
 */
final class Visitor implements AutoCloseable {

    /** The classes by which htmx marks what it asks for, puts in and has put in. */
    private static final String UNDER_WAY = ".htmx-request, .htmx-swapping, .htmx-settling";

    private final BrowserContext context;
    private final Page page;
    private final Visit visit;
    private final String server;
    private final List<String> complaints = new ArrayList<>();
    private int arrivals;

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
        page.onDOMContentLoaded(there -> arrivals++);
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

    /** Presses what leads to another page, and waits until that is there and at rest. */
    void follow(Locator way) {
        followed(way::click);
    }

    /** Does what leads to another page, and waits until that is there and at rest. */
    void followed(Runnable way) {
        page.waitForLoadState();
        int before = arrivals;
        way.run();
        page.waitForCondition(() -> arrivals > before);
        rests();
    }

    /** Waits until all of the page is there and htmx has put in what it asked for and scrolled to it. */
    void rests() {
        page.waitForLoadState();
        if (visit.scripts()) {
            PlaywrightAssertions.assertThat(page.locator(UNDER_WAY)).hasCount(0);
        }
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

    /** Fills in the login that is shown, sends it, and comes to the page that answers. */
    void logIn(String name, String password) {
        page.getByLabel("Name").fill(name);
        page.getByLabel("Password").fill(password);
        follow(button("Log in"));
    }

    /** The picture is fetched, wherever on the page it stands, and shows something. */
    void isDrawn(Locator picture) {
        Object width = picture.evaluate(
                "image => { image.loading = 'eager'; return image.decode().then(() => image.naturalWidth); }");
        assertThat(((Number) width).intValue())
                .as("pixels of a picture on %s", page.url())
                .isPositive();
    }

    /** The page as it stands, once it is at rest, is usable by everybody. */
    void holds() {
        rests();
        visit.holds(page);
    }

    @Override
    public void close() {
        context.close();
        assertThat(complaints).isEmpty();
    }
}
