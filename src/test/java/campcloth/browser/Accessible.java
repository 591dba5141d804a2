package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.util.List;

/** Holds a page against the rules of WCAG 2.2, levels A and AA, and the usual practices beyond. */
final class Accessible {

    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice");

    private Accessible() {}

    static void isAccessible(Page page) {
        assertThat(new AxeBuilder(page)
                        .withTags(RULES).analyze().getViolations().stream()
                                .map(v -> v.getId() + ": " + v.getHelp() + " "
                                        + v.getNodes().stream()
                                                .limit(5)
                                                .map(node -> node.getHtml() + " " + node.getFailureSummary())
                                                .toList())
                                .toList())
                .as("what axe finds on %s", page.url())
                .isEmpty();
    }

    /** Nothing sticks out of the screen to the side. */
    static void fitsItsScreen(Page page) {
        Object tooWide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(((Number) tooWide).intValue())
                .as("pixels beyond the screen on %s", page.url())
                .isZero();
    }
}
