package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The measure itself: what it passes, and that it finds what others have to find nothing of. */
@ExtendWith(BrowserThere.class)
class AccessibleTest {

    private static final String GOOD = "<p>Wool at the fires.</p>";

    @Test
    void aPageWithoutFaultsPasses() {
        assertThatCode(() -> holds(Visit.DESKTOP, GOOD)).doesNotThrowAnyException();
        assertThatCode(() -> holds(Visit.PHONE, GOOD)).doesNotThrowAnyException();
    }

    @Test
    void aPictureWithoutWordsIsFound() {
        assertThatThrownBy(() -> holds(Visit.PHONE, GOOD + "<img src='data:,'>"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("image-alt");
    }

    @Test
    void whatCannotBeReadInTheDarkIsFoundOnADesktop() {
        String dim = "<style>@media (prefers-color-scheme: dark) { body { background: #333 !important } }</style>" + GOOD;
        assertThatThrownBy(() -> holds(Visit.DESKTOP, dim))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("color-contrast")
                .hasMessageContaining("DARK");
    }

    @Test
    void whatSticksOutToTheSideIsFound() {
        assertThatThrownBy(() -> holds(Visit.PHONE, GOOD + "<div style='width: 500px'>wide</div>"))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("pixels beyond the screen");
    }

    private static void holds(Visit visit, String inside) {
        try (BrowserContext visitor = Browsers.visitor(visit)) {
            Page page = visitor.newPage();
            page.setContent("<!DOCTYPE html><html lang='en'><head><title>Fires</title><meta name='viewport'"
                    + " content='width=device-width'></head><body style='margin: 0; background: #fff; color: #111'>"
                    + "<main><h1>Fires</h1>" + inside + "</main></body></html>");
            visit.holds(page);
        }
    }
}
