package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
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
        try (Visitor visitor = new Visitor(visit, port)) {
            assertThat(title(visitor.at("/"))).isVisible();
            visitor.holds();
            visitor.follow(visitor.button("Show inches and ounces"));
            assertThat(visitor.button("Show centimetres and grams")).isVisible();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsNotThereIsToldOnAPage(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            assertThat(title(visitor.at("/nowhere"))).hasText("There is nothing here");
            visitor.holds();
        }
    }

    private static Locator title(Page page) {
        return page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1));
    }
}
