package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.errand.Errand;
import campcloth.errand.Errands;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.Season;
import campcloth.event.Seasons;
import campcloth.job.LayoutGate;
import campcloth.rest.FullGate;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** From the chosen cloth to the kept sheet, and away with it again. */
@InBrowser
class SheetTest {

    private static final String CLOTH = "wool-diamond-twill-260";
    private static final String ASKED = "season=SUMMER&design=tunic&size=M-M";

    @LocalServerPort
    private int port;

    @Autowired
    private Events events;

    @Autowired
    private Errands errands;

    @Autowired
    private Seasons seasons;

    @Autowired
    private LayoutGate gate;

    @ParameterizedTest
    @EnumSource
    void fromTheShopToTheSheetAndAway(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/plan/buy?" + ASKED + "&cloth=" + CLOTH);
            visitor.holds();
            page.getByLabel("Width from selvedge to selvedge").fill("20");
            visitor.follow(visitor.button("Make the plan sheet"));
            assertThat(page.getByText("Something cannot be used as it stands")).isVisible();
            assertThat(page.getByLabel("Width from selvedge to selvedge")).hasValue("20");
            assertThat(page.getByLabel("Width from selvedge to selvedge")).hasAttribute("aria-invalid", "true");
            visitor.holds();
            page.getByLabel("Width from selvedge to selvedge").fill("140");
            page.getByLabel("Price").fill("20");
            page.getByLabel("A length at hand").fill("150");
            page.getByLabel("Name of the sheet").fill("Tunic for the river " + visit);
            visitor.follow(visitor.button("Make the plan sheet"));
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                    .hasText("Tunic for the river " + visit);
            assertThat(page.getByText("140 cm wide").first()).isVisible();
            assertThat(page.getByText("The length at hand.")).isVisible();
            assertThat(page.getByRole(AriaRole.IMG)).isVisible();
            visitor.holds();
            String path = visitor.path();
            Errand kept = errands.byId(path.substring("/sheets/".length()))
                    .orElseThrow()
                    .errand();
            assertThat(kept.cloth().cloth().figures().toString()).contains("told by the shop");
            visitor.at("/sheets");
            visitor.holds();
            visitor.follow(visitor.link("Tunic for the river " + visit));
            visitor.follow(visitor.button("Delete"));
            assertThat(page.getByText("It cannot be brought back.")).isVisible();
            visitor.holds();
            visitor.follow(visitor.button("Yes, delete it"));
            assertThat(visitor.path()).isEqualTo("/sheets");
            assertThat(visitor.link("Tunic for the river " + visit)).hasCount(0);
            visitor.at(path);
            assertThat(visitor.heading("There is nothing here")).isVisible();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatMeltsAtAFireIsStoppedBeforeAllElse(Visit visit) {
        String path = new SheetSamples(port)
                .made(ASKED + "&evening.fireRole=COOKING&evening.fireDistanceM=0.6", "polyester-fleece-250", "");
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at(path);
            assertThat(page.locator("h1 + .stops .warning-STOP").first()).isInViewport();
            assertThat(page.locator(".warning-STOP .warning-head").first()).hasText("Stop");
            visitor.holds();
        }
    }

    @Test
    void theSheetStandsOnTheEventAsItWas() {
        KeptEvent event =
                events.add(new Event("Wendlow camp", Season.SUMMER, seasons.spells(Season.SUMMER), List.of()));
        String path = new SheetSamples(port).made("event=" + event.id() + "&design=apron&size=W-M", CLOTH, "");
        assertThat(text(path)).contains("Wendlow camp").doesNotContain("has changed since");
        events.replace(
                event.id(),
                event.version(),
                new Event("Other", Season.WINTER, seasons.spells(Season.WINTER), List.of()));
        assertThat(text(path)).contains("Wendlow camp").contains("has changed since");
        long now = events.byId(event.id()).orElseThrow().version();
        events.remove(event.id(), now);
        assertThat(text(path)).contains("Wendlow camp").contains("no longer on file");
    }

    @Test
    void numbersMeanTheUnitsTheyWereTypedIn() {
        String asked = "season=SUMMER&design=apron&measures[waistCm]=84";
        String path = new SheetSamples(port).made(asked, CLOTH, "&typedIn=imperial&widthCm=60&lengths[widthCm]=25.5");
        Errand kept =
                errands.byId(path.substring("/sheets/".length())).orElseThrow().errand();
        assertThat(kept.garment().wearerCm()).containsEntry("waistCm", 84.0);
        assertThat(((Number) kept.garment().options().get("widthCm")).doubleValue())
                .isCloseTo(25.5 * 2.54, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(text(path)).contains("152.4 cm wide");
    }

    @Test
    void whatIsOutsideGetsNoSheet() {
        SheetSamples samples = new SheetSamples(port);
        String asked = ASKED + "&use=CHILDRENS_COSTUME";
        assertThat(text("/plan/buy?" + asked + "&cloth=" + CLOTH))
                .contains("not graded")
                .doesNotContain("Make the plan sheet");
        HttpResponse<String> answer =
                samples.post("/plan/sheets", "asked=" + SheetSamples.encoded(asked) + "&cloth=" + CLOTH);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("not graded");
    }

    @Test
    void whatCannotBeUsedIsToldAtItsField() {
        SheetSamples samples = new SheetSamples(port);
        String form = "asked=" + SheetSamples.encoded(ASKED) + "&cloth=" + CLOTH;
        for (String wrong : List.of(
                "lengths[hemAllowanceCm]=99",
                "shopStepCm=0",
                "count=1000",
                "repeatLengthCm=0.01",
                "pricePerMetre=-2",
                "widthCm=wide")) {
            HttpResponse<String> answer = samples.post("/plan/sheets", form + "&" + wrong);
            assertThat(answer.statusCode()).as(wrong).isEqualTo(422);
            assertThat(answer.body()).as(wrong).contains("aria-invalid=\"true\"");
        }
        assertThat(samples.post("/plan/sheets", "asked=%25ZZ&cloth=" + CLOTH).statusCode())
                .isEqualTo(422);
        assertThat(samples.post("/plan/sheets", form.replace(CLOTH, "none")).statusCode())
                .isEqualTo(404);
        assertThat(samples.get("/sheets/nothing").statusCode()).isEqualTo(404);
        assertThat(samples.get("/sheets/nothing.pdf").statusCode()).isEqualTo(404);
        assertThat(samples.get("/sheets/nothing/layout.svg").statusCode()).isEqualTo(404);
    }

    @Test
    void whereAllPlacesAreTakenTheFormIsSentAwayInTime() throws Exception {
        FullGate.whileFull(gate, () -> {
            HttpResponse<String> answer = new SheetSamples(port)
                    .post("/plan/sheets", "asked=" + SheetSamples.encoded(ASKED) + "&cloth=" + CLOTH);
            assertThat(answer.statusCode()).isEqualTo(503);
            assertThat(answer.headers().firstValue("Retry-After")).hasValue("5");
            assertThat(answer.body()).contains("Too many at once");
        });
    }

    private String text(String path) {
        return new String(new SheetSamples(port).get(path).body(), java.nio.charset.StandardCharsets.UTF_8);
    }
}
