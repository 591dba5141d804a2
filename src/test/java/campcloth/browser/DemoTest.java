package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.demo.Demo;
import campcloth.demo.DemoThing;
import campcloth.demo.DemoThing.Standing;
import com.microsoft.playwright.Page;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** The first visit: the demo is there, goes with one click, and comes back when it is asked for. */
@InBrowser
@TestPropertySource(properties = "campcloth.demo=true")
class DemoTest {

    private static final String NOTE =
            "The Wendlow river camp demo is there to try, and can be removed with one click.";

    @LocalServerPort
    private int port;

    @Autowired
    private Demo demo;

    @ParameterizedTest
    @EnumSource
    void theDemoIsThereGoesWithOneClickAndComesBack(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/");
            assertThat(page.getByText(NOTE)).isVisible();
            visitor.holds();
            visitor.at("/events");
            assertThat(page.getByText(NOTE)).isVisible();
            visitor.holds();
            visitor.follow(visitor.link("Wendlow river camp (demo)"));
            assertThat(page.getByText("This event is invented")).isVisible();
            visitor.holds();
            visitor.follow(visitor.link("Fire rules to hang up"));
            visitor.holds();
            visitor.at("/");
            visitor.follow(visitor.button("Remove the demo"));
            assertThat(visitor.path()).isEqualTo("/demo");
            assertThat(page.getByText("Removed").first()).isVisible();
            visitor.holds();
            assertThat(demo.things()).extracting(DemoThing::standing).containsOnly(Standing.REMOVED);
            visitor.at("/");
            assertThat(page.getByText(NOTE)).not().isVisible();
            visitor.at("/events");
            visitor.follow(visitor.link("About the demo"));
            visitor.follow(visitor.button("Bring the demo back"));
            assertThat(page.getByText("There, as the demo put it in").first()).isVisible();
            assertThat(demo.things()).extracting(DemoThing::standing).containsOnly(Standing.AS_PUT_IN);
        }
    }
}
