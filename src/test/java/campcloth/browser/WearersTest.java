package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.errand.Errand;
import campcloth.errand.Errands;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Who wears it, told where the cloth is chosen; the same garment for others from the same length of cloth. */
@InBrowser
class WearersTest {

    private static final String CLOTH = "wool-diamond-twill-260";
    private static final String ASKED = "season=SUMMER&design=tunic&size=M-M";

    @LocalServerPort
    private int port;

    @Autowired
    private Errands errands;

    @ParameterizedTest
    @EnumSource
    void forSomebodyNobodyMeasuredAndForOthers(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/plan/buy?season=SUMMER&design=tunic&cloth=" + CLOTH);
            visitor.holds();
            visitor.follow(visitor.button("Make the plan sheet"));
            assertThat(page.getByText("Something cannot be used as it stands")).isVisible();
            assertThat(page.getByLabel("Round the finished garment")).hasAttribute("aria-invalid", "true");
            page.getByLabel("Size").selectOption("M-M");
            page.getByLabel("Name, for the sheet").fill("Ansel " + visit);
            visitor.follow(visitor.button("Add another wearer"));
            Locator second = wearer(page, 2);
            second.getByLabel("Size").selectOption("W-S");
            second.getByLabel("Name, for the sheet").fill("Berit <b>");
            visitor.holds();
            visitor.follow(visitor.button("Add another wearer"));
            wearer(page, 3).getByLabel("Name, for the sheet").fill("Nobody");
            visitor.follow(visitor.button("Remove wearer 3"));
            assertThat(wearer(page, 3)).hasCount(0);
            assertThat(wearer(page, 2).getByLabel("Size")).hasValue("W-S");
            visitor.follow(visitor.button("Make the plan sheet"));
            assertThat(visitor.heading("Who wears them")).isVisible();
            assertThat(page.getByText("Ansel " + visit).first()).isVisible();
            assertThat(page.getByText("Berit <b>").first()).isVisible();
            assertThat(page.getByText("tunic 2 front").first()).isVisible();
            assertThat(page.getByText("Nobody wears")).hasCount(0);
            visitor.holds();
        }
    }

    private static Locator wearer(Page page, int number) {
        return page.getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName("Wearer " + number));
    }

    @Test
    void inchesOfAnotherWearerAreInches() {
        String path = new SheetSamples(port)
                .made(ASKED, CLOTH, "&typedIn=imperial&others[0].size=W-M&others[0].measures[chestCm]=38");
        Errand kept =
                errands.byId(path.substring("/sheets/".length())).orElseThrow().errand();
        assertThat(kept.garment().others()).hasSize(1);
        assertThat(kept.garment().others().get(0).wearerCm().get("chestCm")).isCloseTo(96.52, within(1e-9));
        assertThat(kept.garment().size()).contains("M-M");
    }

    @Test
    void whatIsWrongWithAnotherWearerIsToldThere() {
        HttpResponse<String> answer = new SheetSamples(port)
                .post(
                        "/plan/sheets",
                        "asked=" + SheetSamples.encoded(ASKED) + "&cloth=" + CLOTH
                                + "&others[0].size=W-M&others[1].size=W-M&others[1].measures[chestCm]=5");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("href=\"#others1.measureschestCm\"");
        HttpResponse<String> many = new SheetSamples(port)
                .post(
                        "/plan/sheets",
                        "asked=" + SheetSamples.encoded(ASKED) + "&cloth=" + CLOTH + "&others[4].size=W-M");
        assertThat(many.statusCode()).isEqualTo(422);
        assertThat(many.body()).contains("plan for at most 5 wearers on a sheet");
    }
}
