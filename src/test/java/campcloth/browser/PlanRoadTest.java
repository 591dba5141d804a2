package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Seasons;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** From an event to a ranking and to cloths side by side. */
@InBrowser
class PlanRoadTest {

    private static final String HOSTILE =
            "Camp <script>alert(1)</script>\"'><img src=x onerror=alert(2)> \u202Egnol " + "w".repeat(80);

    @LocalServerPort
    private int port;

    @Autowired
    private Events events;

    @Autowired
    private Seasons seasons;

    @Autowired
    private Cloths cloths;

    private KeptEvent event;
    private KeptCloth hostile;
    private final List<String> complaints = new ArrayList<>();
    private final List<String> elsewhere = new ArrayList<>();

    @BeforeEach
    void keep() {
        SafetyRule rule = new SafetyRule(
                SafetyRule.Authority.EVENT,
                "Nothing that melts within three metres <b>of fire</b>",
                Optional.of(0.0),
                Set.of(),
                Optional.empty(),
                false,
                Optional.of(3.0));
        event = events.add(new Event(HOSTILE, Season.AUTUMN, seasons.spells(Season.AUTUMN), List.of(rule)));
        Cloth linen = cloths.byId("linen-150-plain").orElseGet(this::anyCloth).cloth();
        hostile = cloths.add(new Cloth(
                HOSTILE,
                linen.blend(),
                linen.weave(),
                linen.surface(),
                linen.finish(),
                linen.nap(),
                linen.stretch(),
                linen.figures(),
                ""));
    }

    private KeptCloth anyCloth() {
        return cloths.matching(ClothSearch.EVERYTHING).get(0);
    }

    @AfterEach
    void forget() {
        events.remove(event.id(), event.version());
        cloths.remove(hostile.id(), hostile.version());
    }

    @ParameterizedTest
    @EnumSource
    void fromTheFirstPageToClothsSideBySide(Visit visit) {
        try (BrowserContext visitor = Browsers.visitor(visit)) {
            Page page = watched(visitor);
            page.navigate(at("/"));
            page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName("Plan a garment"))
                    .getByRole(AriaRole.LINK)
                    .click();
            looked(page, visit, "Plan a garment");
            page.getByLabel("Which event").selectOption(event.id());
            if (!visit.scripts()) {
                button(page, "Show what is known of it").click();
            }
            assertThat(page.getByText("Nothing that melts within three metres <b>of fire</b>"))
                    .isVisible();
            page.getByLabel("Apron").check();
            if (!visit.scripts()) {
                button(page, "Show what this garment needs").click();
            }
            assertThat(page.getByText("Measurements for this garment: Apron")).isVisible();
            assertThat(page.getByText("Measurements for this garment: Tunic")).hasCount(0);
            page.getByLabel("Size", new Page.GetByLabelOptions().setExact(true)).selectOption("W-M");
            looked(page, visit, "Plan a garment");
            button(page, "Rank the cloths").click();

            looked(page, visit, "Cloths for this garment: Apron");
            assertThat(page.getByRole(AriaRole.ARTICLE).first()).containsText("1.");
            Locator named = page.locator(".plan-first a");
            assertThat(named).hasCount(3);
            named.nth(1).click();
            assertThat(page.locator("#cloth-2")).isInViewport();
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName("Ruled out")))
                    .isVisible();
            int first = page.locator("article").count();
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Show more"))
                    .first()
                    .click();
            assertThat(page.locator("article")).hasCount(first + 15);

            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("What would better the verdict?"))
                    .last()
                    .click();
            assertThat(page.getByText("never at a change of a rule")).isVisible();
            if (!visit.scripts()) {
                page.goBack();
            }

            page.getByLabel("Compare: ").nth(0).check();
            page.getByLabel("Compare: ").nth(1).check();
            page.getByLabel("Compare: ").last().check();
            button(page, "Compare those ticked").click();
            looked(page, visit, "Side by side for this garment: Apron");
            Locator columns = page.getByRole(AriaRole.TABLE).first().getByRole(AriaRole.COLUMNHEADER);
            assertThat(columns).hasCount(3);
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("How firm is this order?"))
                    .click();
            looked(page, visit, "How firm the order is");
            assertQuiet();
        }
    }

    @ParameterizedTest
    @EnumSource
    void hostileNamesAreOnlyText(Visit visit) {
        try (BrowserContext visitor = Browsers.visitor(visit)) {
            Page page = watched(visitor);
            page.navigate(at("/plan/cloths?event=" + event.id() + "&design=shirt&text=gnol"));
            looked(page, visit, "Cloths for this garment: Shirt of rectangles");
            assertThat(page.getByRole(AriaRole.ARTICLE)).hasCount(1);
            assertThat(page.getByRole(AriaRole.ARTICLE)).containsText("<script>alert(1)</script>");
            page.navigate(at("/plan/compare?event=" + event.id() + "&design=shirt&cloth=" + hostile.id() + "&cloth="
                    + anyCloth().id()));
            looked(page, visit, "Side by side for this garment: Shirt of rectangles");
            page.navigate(at("/plan/better?event=" + event.id() + "&design=shirt&cloth=" + hostile.id()));
            looked(page, visit, "What would better the verdict");
            assertQuiet();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsWrongIsToldAtItsField(Visit visit) {
        try (BrowserContext visitor = Browsers.visitor(visit)) {
            Page page = watched(visitor);
            page.navigate(at("/plan/cloths?season=SUMMER&design=tunic&measures%5BchestCm%5D=900&day.airC=warm"));
            looked(page, visit, "Plan a garment");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("Write a number with digits");
            page.navigate(at("/plan/cloths?season=SUMMER&design=tunic&measures%5BchestCm%5D=900"));
            looked(page, visit, "Plan a garment");
            assertThat(page.getByLabel("Round the chest")).hasValue("900");
            page.navigate(at("/plan?use=CHILDRENS_COSTUME"));
            looked(page, visit, "No cloth is ranked for this");
        }
    }

    private Page watched(BrowserContext visitor) {
        Page page = visitor.newPage();
        page.setDefaultTimeout(60_000);
        page.onConsoleMessage(message -> complaints.add(message.text()));
        page.onDialog(dialog -> complaints.add(dialog.message()));
        page.onRequest(request -> {
            if (!request.url().startsWith(at("/"))) {
                elsewhere.add(request.url());
            }
        });
        return page;
    }

    private void looked(Page page, Visit visit, String heading) {
        assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .hasText(heading);
        assertThat(page.content()).as("a text is missing on %s", page.url()).doesNotContain("??");
        if (visit.scripts()) {
            Accessible.isAccessible(page);
            Accessible.fitsItsScreen(page);
        }
    }

    private void assertQuiet() {
        assertThat(elsewhere).isEmpty();
        assertThat(complaints).isEmpty();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }

    private String at(String path) {
        return "http://localhost:" + port + path;
    }
}
