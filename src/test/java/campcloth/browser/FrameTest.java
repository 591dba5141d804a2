package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What all pages share. */
@InBrowser
class FrameTest {

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @EnumSource
    void firstPageAndUnits(Visit visit) {
        try (BrowserContext visitor = Browsers.visitor(visit)) {
            Page page = visitor.newPage();
            List<String> complaints = new ArrayList<>();
            List<String> elsewhere = new ArrayList<>();
            page.onConsoleMessage(message -> complaints.add(message.text()));
            page.onRequest(request -> {
                if (!request.url().startsWith("http://localhost:" + port + "/")) {
                    elsewhere.add(request.url());
                }
            });
            page.navigate("http://localhost:" + port + "/");
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                    .isVisible();
            if (visit.scripts()) {
                Accessible.isAccessible(page);
                Accessible.fitsItsScreen(page);
            }
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Show inches and ounces"))
                    .click();
            assertThat(page.getByRole(
                            AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Show centimetres and grams")))
                    .isVisible();
            assertThat(elsewhere).isEmpty();
            assertThat(complaints).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsNotThereIsToldOnAPage(Visit visit) {
        try (BrowserContext visitor = Browsers.visitor(visit)) {
            Page page = visitor.newPage();
            page.navigate("http://localhost:" + port + "/nowhere");
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                    .hasText("There is nothing here");
            if (visit.scripts()) {
                Accessible.isAccessible(page);
            }
        }
    }
}
