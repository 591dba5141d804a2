package campcloth.browser;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.Seasons;
import com.microsoft.playwright.Page;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The sheet of fire rules that is hung up, as the browser prints it. */
@InBrowser
class FireRulesOnPaperTest {

    @LocalServerPort
    private int port;

    @Autowired
    private Events events;

    @Autowired
    private Seasons seasons;

    @ParameterizedTest
    @ValueSource(strings = {"A4", "Letter"})
    void theSheetIsPrintedOnTwoPagesAtMostWithNothingOutside(String format) {
        KeptEvent kept = events.add(Camps.named("Wendlow river camp", seasons));
        try (Visitor visitor = new Visitor(Visit.DESKTOP, port)) {
            Page page = visitor.at("/events/" + kept.id() + "/fire-rules");
            page.locator("img").all().forEach(visitor::isDrawn);
            Printed printed =
                    Printed.of(page.pdf(new Page.PdfOptions().setFormat(format).setPreferCSSPageSize(false)));
            assertThat(printed.pages()).hasSizeBetween(1, 2);
            assertThat(printed.outside()).isEmpty();
            assertThat(printed.text().replaceAll("\\s+", " "))
                    .contains("No acrylic at the fires.", "Wendlow rules, page 2", "edition 3", "Local law")
                    .contains("does not replace the fire marshals or local law", "version 0 of the event")
                    .doesNotContain("Show inches");
        }
    }
}
