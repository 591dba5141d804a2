package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.event.Event;
import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.SafetyRule;
import campcloth.event.Season;
import campcloth.event.Seasons;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
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
            "Camp <script>alert(1)</script>\"'><img src=x onerror=alert(2)> \u202Egnoldaor " + "w".repeat(80);

    /** Cloths are named by it in no other test. */
    private static final String MARK = "gnoldaor";

    private static final String LINEN = "linen-plain-150";

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
        Cloth linen = cloths.byId(LINEN).orElseThrow().cloth();
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

    @AfterEach
    void forget() {
        events.remove(event.id(), event.version());
        cloths.remove(hostile.id(), hostile.version());
    }

    @ParameterizedTest
    @EnumSource
    void fromTheFirstPageToClothsSideBySide(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/");
            visitor.follow(visitor.heading("Plan a garment").getByRole(AriaRole.LINK));
            looked(visitor, "Plan a garment");
            page.getByLabel("Which event").selectOption(event.id());
            if (!visit.scripts()) {
                visitor.follow(visitor.button("Show what is known of it"));
            }
            assertThat(page.getByText("Nothing that melts within three metres <b>of fire</b>"))
                    .isVisible();
            page.getByLabel("Apron").check();
            if (!visit.scripts()) {
                visitor.follow(visitor.button("Show what this garment needs"));
            }
            assertThat(page.getByText("Measurements for this garment: Apron")).isVisible();
            assertThat(page.getByText("Measurements for this garment: Tunic")).hasCount(0);
            page.getByLabel("Size", new Page.GetByLabelOptions().setExact(true)).selectOption("W-M");
            looked(visitor, "Plan a garment");
            visitor.follow(visitor.button("Rank the cloths"));

            looked(visitor, "Cloths for this garment: Apron");
            assertThat(page.getByRole(AriaRole.ARTICLE).first()).containsText("1.");
            Locator named = page.locator(".plan-first a");
            assertThat(named).hasCount(3);
            named.nth(1).click();
            assertThat(page.locator("#cloth-2")).isInViewport();
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName("Ruled out")))
                    .isVisible();
            int first = page.locator("article").count();
            visitor.follow(page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Show more"))
                    .first());
            assertThat(page.locator("article")).hasCount(first + 15);

            Locator better = page.getByRole(
                            AriaRole.LINK, new Page.GetByRoleOptions().setName("What would better the verdict?"))
                    .last();
            if (visit.scripts()) {
                better.click();
                assertThat(page.getByText("never at a change of a rule")).isVisible();
            } else {
                visitor.follow(better);
                assertThat(page.getByText("never at a change of a rule")).isVisible();
                page.goBack();
            }

            page.getByLabel("Compare: ").nth(0).check();
            page.getByLabel("Compare: ").nth(1).check();
            page.getByLabel("Compare: ").last().check();
            visitor.follow(visitor.button("Compare those ticked"));
            looked(visitor, "Side by side for this garment: Apron");
            Locator columns = page.getByRole(AriaRole.TABLE).first().getByRole(AriaRole.COLUMNHEADER);
            assertThat(columns).hasCount(3);
            visitor.follow(visitor.link("How firm is this order?"));
            looked(visitor, "How firm the order is");
        }
    }

    /** Where no scripts run, none of these could. */
    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE"})
    void hostileNamesAreOnlyText(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/plan/cloths?event=" + event.id() + "&design=shirt&text=" + MARK);
            looked(visitor, "Cloths for this garment: Shirt of rectangles");
            assertThat(page.getByRole(AriaRole.ARTICLE)).hasCount(1);
            assertThat(page.getByRole(AriaRole.ARTICLE)).containsText("<script>alert(1)</script>");
            visitor.at("/plan/compare?event=" + event.id() + "&design=shirt&cloth=" + hostile.id() + "&cloth=" + LINEN);
            looked(visitor, "Side by side for this garment: Shirt of rectangles");
            visitor.at("/plan/better?event=" + event.id() + "&design=shirt&cloth=" + hostile.id());
            looked(visitor, "What would better the verdict");
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsWrongIsToldAtItsField(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/plan/cloths?season=SUMMER&design=tunic&measures%5BchestCm%5D=900&day.airC=warm");
            looked(visitor, "Plan a garment");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("Write a number with digits");
            visitor.at("/plan/cloths?season=SUMMER&design=tunic&measures%5BchestCm%5D=900");
            looked(visitor, "Plan a garment");
            assertThat(page.getByLabel("Round the chest")).hasValue("900");
            visitor.at("/plan?use=CHILDRENS_COSTUME");
            looked(visitor, "No cloth is ranked for this");
        }
    }

    private static void looked(Visitor visitor, String heading) {
        Page page = visitor.page();
        assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .hasText(heading);
        assertThat(page.content()).as("a text is missing on %s", page.url()).doesNotContain("??");
        visitor.holds();
    }
}
