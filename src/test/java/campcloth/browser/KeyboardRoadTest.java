package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;

/** From the first page to a ranking by the keyboard alone. */
@InBrowser
class KeyboardRoadTest {

    /** The first answers of a service that has just started may be waited for. */
    private static final double PATIENCE_MS = 25_000;

    /** Nothing on the way lies further than this many presses of the key. */
    private static final int MOST_TABS = 150;

    @LocalServerPort
    private int port;

    @Test
    void theKeyboardAloneLeadsToARanking() {
        try (Visitor visitor = new Visitor(Visit.DESKTOP, port)) {
            Page page = visitor.at("/");
            page.setDefaultTimeout(PATIENCE_MS);
            page.keyboard().press("Tab");
            assertThat(focused(page)).hasText("To the contents");
            page.keyboard().press("Enter");
            tabTo(page, visitor.heading("Plan a garment").getByRole(AriaRole.LINK));
            page.keyboard().press("Enter");
            assertThat(visitor.button("Rank the cloths")).isVisible();
            tabTo(page, page.locator("#season"));
            page.keyboard().type("autumn");
            assertThat(page.locator("#season")).hasValue("AUTUMN");
            tabTo(page, page.locator("input[name=design]"));
            page.keyboard().press("Space");
            tabTo(page, size(page));
            page.keyboard().press("ArrowDown");
            assertThat(size(page)).not().hasValue("");
            tabTo(page, visitor.button("Rank the cloths"));
            page.keyboard().press("Enter");
            assertThat(page.getByRole(AriaRole.ARTICLE).first()).isVisible();
            visitor.holds();
        }
    }

    private static Locator size(Page page) {
        return page.getByLabel("Size", new Page.GetByLabelOptions().setExact(true));
    }

    private static Locator focused(Page page) {
        return page.locator(":focus");
    }

    /** Presses the key until one of these has the focus, and shows that where it is can be seen. */
    private static void tabTo(Page page, Locator wanted) {
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            if ((boolean) wanted.first()
                    .evaluate("one => one === document.activeElement || (one.type === 'radio'"
                            + " && document.activeElement.name === one.name)")) {
                assertThat(focused(page)).isInViewport();
                String outline = (String) focused(page).evaluate("one => getComputedStyle(one).outlineStyle");
                assertThat(outline).as("the focus can be seen").isNotEqualTo("none");
                return;
            }
        }
        throw new AssertionError("the key never reaches " + wanted);
    }
}
