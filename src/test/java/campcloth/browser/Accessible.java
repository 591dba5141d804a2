package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.Map;

/**
 * Holds a page against the rules of WCAG 2.2, levels A and AA, and the usual practices beyond. Of all that axe looks at only what it finds
 * fault with is told: to describe everything else takes it longer than to look.
 */
final class Accessible {

    private static final Map<String, Object> RULES = Map.of(
            "type",
            "tag",
            "values",
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"));

    /** What a rule says may differ from one scheme of colours to another. */
    private static final Map<String, Object> RULES_OF_COLOURS =
            Map.of("type", "rule", "values", List.of("color-contrast", "link-in-text-block"));

    private static final String AXE = "() => {" + AxeBuilder.getAxeScript() + "}";
    private static final String FAULTS = "rules => axe.run(document, { runOnly: rules, resultTypes: ['violations'] })"
            + ".then(results => results.violations.map(rule => rule.id + ': ' + rule.help + ' '"
            + " + rule.nodes.slice(0, 5).map(node => node.html + ' ' + node.failureSummary).join(', ')))";

    private Accessible() {}

    /** The page as it is shown in each of these schemes of colours. The last is the one that it goes on with. */
    static void isAccessible(Page page, List<ColorScheme> schemes) {
        assertThat(page.frames()).as("axe looks into one frame, on %s", page.url()).hasSize(1);
        if (!(boolean) page.evaluate("'axe' in window")) {
            page.evaluate(AXE);
        }
        Map<String, Object> rules = RULES;
        for (ColorScheme scheme : schemes) {
            page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
            assertThat((List<?>) page.evaluate(FAULTS, rules))
                    .as("what axe finds on %s, %s", page.url(), scheme)
                    .isEmpty();
            rules = RULES_OF_COLOURS;
        }
    }

    /** Nothing sticks out of the screen to the side. */
    static void fitsItsScreen(Page page) {
        Object tooWide = page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(((Number) tooWide).intValue())
                .as("pixels beyond the screen on %s", page.url())
                .isZero();
    }
}
