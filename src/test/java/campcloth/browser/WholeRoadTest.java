package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A beginner's whole road, from the first page to a plan sheet and into the shop, by links and buttons alone. */
@InBrowser
class WholeRoadTest {

    private static final String RULE = "No more than a third synthetic within three metres of open fire";

    /** Nothing on the way lies further than this many presses of the key. */
    private static final int MOST_TABS = 150;

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @EnumSource
    void fromTheFirstPageToThePlanSheetAndIntoTheShop(Visit visit) {
        String camp = "Bend of the river " + visit;
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/");
            visitor.holds();
            anEventIsMade(visitor, camp);
            visitor.follow(visitor.link("Plan a garment for it"));
            visitor.holds();
            garmentAndSize(visitor, visit, camp);
            visitor.follow(visitor.button("Rank the cloths"));
            assertThat(visitor.heading("Cloths for this garment: Tunic")).isVisible();
            visitor.holds();
            String chosen = twoAreComparedAndOneChosen(visitor);
            theShopTells(visitor, "Tunic, " + visit);
            theSheetSaysWhatToBuy(visitor, chosen);
            theBargainIsRuledOut(visitor, camp);
        }
    }

    private void anEventIsMade(Visitor visitor, String camp) {
        Page page = visitor.page();
        visitor.follow(visitor.heading("Events").getByRole(AriaRole.LINK));
        visitor.holds();
        visitor.follow(visitor.link("Describe an event"));
        page.locator("#name").fill(camp);
        page.locator("#spells1\\.name").fill("evening at the fire");
        opened(visitor, "#spells1\\.fireRole").selectOption("SEATED");
        page.locator("#spells1\\.fireDistanceM").fill("2");
        visitor.button("Add a rule").click();
        assertThat(page.locator("fieldset:focus")).containsText("Rule 1");
        page.locator("#rules0\\.statement").fill(RULE);
        opened(visitor, "#rules0\\.maxMeltablePercent").fill("33");
        page.locator("#rules0\\.withinM").fill("3");
        visitor.holds();
        visitor.follow(visitor.button("Keep the event").last());
        assertThat(visitor.heading(camp)).isVisible();
        assertThat(page.locator("#rules")).containsText(RULE);
        visitor.holds();
    }

    private void garmentAndSize(Visitor visitor, Visit visit, String camp) {
        Page page = visitor.page();
        assertThat(page.getByLabel("Which event").locator("option:checked")).containsText(camp);
        page.getByLabel("Tunic").check();
        if (!visit.scripts()) {
            visitor.follow(visitor.button("Show what this garment needs"));
        }
        assertThat(page.getByText("Measurements for this garment: Tunic")).isVisible();
        size(page).selectOption("M-M");
        visitor.holds();
    }

    private String twoAreComparedAndOneChosen(Visitor visitor) {
        Page page = visitor.page();
        page.getByLabel("Compare: ").nth(0).check();
        page.getByLabel("Compare: ").nth(1).check();
        visitor.follow(visitor.button("Compare those ticked"));
        assertThat(visitor.heading("Side by side for this garment: Tunic")).isVisible();
        assertThat(page.getByRole(AriaRole.TABLE).first().getByRole(AriaRole.COLUMNHEADER))
                .hasCount(2);
        visitor.holds();
        visitor.follow(visitor.link("To the ranking").first());
        assertThat(visitor.heading("Cloths for this garment: Tunic")).isVisible();
        Locator best = page.getByRole(AriaRole.ARTICLE).first();
        String name = best.getByRole(AriaRole.HEADING).locator("bdi").first().innerText();
        visitor.follow(best.getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("Choose this cloth")));
        return name;
    }

    private void theShopTells(Visitor visitor, String title) {
        Page page = visitor.page();
        assertThat(visitor.button("Make the plan sheet")).isVisible();
        visitor.holds();
        page.getByLabel("Width from selvedge to selvedge").fill("150");
        page.getByLabel("Price").fill("18.50");
        page.getByLabel("Name of the sheet").fill(title);
        visitor.follow(visitor.button("Make the plan sheet"));
        assertThat(visitor.heading(title)).isVisible();
        visitor.holds();
    }

    private void theSheetSaysWhatToBuy(Visitor visitor, String cloth) {
        Page page = visitor.page();
        Locator main = page.getByRole(AriaRole.MAIN);
        assertThat(main).containsText(cloth);
        assertThat(main).containsText("150 cm wide");
        assertThat(main).containsText(Pattern.compile("\\d+([.,]\\d+)? m\\b"));
        assertThat(main).containsText(RULE);
        assertThat(main).containsText("Any clothing can burn");
        Locator layout = page.getByRole(AriaRole.IMG).first();
        assertThat(layout).isVisible();
        visitor.isDrawn(layout);
    }

    private void theBargainIsRuledOut(Visitor visitor, String camp) {
        Page page = visitor.page();
        visitor.follow(visitor.link("At the shop"));
        visitor.holds();
        page.getByLabel("What the label says").fill("65/35 polyester/cotton");
        page.getByLabel("Garment").selectOption("tunic");
        Locator ours = page.locator("#event option", new Page.LocatorOptions().setHasText(camp));
        page.locator("#event").selectOption(ours.getAttribute("value"));
        visitor.button("May I?").click();
        assertThat(page.locator("#may .verdict").first()).hasText("Ruled out");
        assertThat(page.locator("#may")).containsText("Stop");
        assertThat(page.locator("#answer")).containsText(RULE);
        visitor.holds();
    }

    @Test
    void theKeyboardAloneLeadsToARanking() {
        try (Visitor visitor = new Visitor(Visit.DESKTOP, port)) {
            Page page = visitor.at("/");
            page.keyboard().press("Tab");
            assertThat(focused(page)).hasText("To the contents");
            page.keyboard().press("Enter");
            tabTo(page, visitor.heading("Plan a garment").getByRole(AriaRole.LINK));
            visitor.followed(() -> page.keyboard().press("Enter"));
            assertThat(visitor.button("Rank the cloths")).isVisible();
            tabTo(page, page.locator("#season"));
            page.keyboard().type("autumn");
            assertThat(page.locator("#season")).hasValue("AUTUMN");
            visitor.rests();
            tabTo(page, page.locator("input[name=design]"));
            page.keyboard().press("Space");
            tabTo(page, size(page));
            page.keyboard().press("ArrowDown");
            assertThat(size(page)).not().hasValue("");
            tabTo(page, visitor.button("Rank the cloths"));
            visitor.followed(() -> page.keyboard().press("Enter"));
            assertThat(page.getByRole(AriaRole.ARTICLE).first()).isVisible();
            visitor.holds();
        }
    }

    /** A field that may lie in a part that is still folded. */
    private static Locator opened(Visitor visitor, String field) {
        visitor.rests();
        Page page = visitor.page();
        Locator wanted = page.locator(field);
        if (!wanted.isVisible()) {
            page.locator("details", new Page.LocatorOptions().setHas(wanted))
                    .locator("summary")
                    .click();
        }
        return wanted;
    }

    private static Locator size(Page page) {
        return page.getByLabel("Size", new Page.GetByLabelOptions().setExact(true));
    }

    private static Locator focused(Page page) {
        return page.locator(":focus");
    }

    /** Presses the key until one of these has the focus, and shows that where it is can be seen. */
    private static void tabTo(Page page, Locator wanted) {
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            if ((boolean) wanted.first()
                    .evaluate("one => one === document.activeElement || (one.type === 'radio'"
                            + " && document.activeElement.name === one.name)")) {
                assertThat(focused(page)).isInViewport();
                String outline = (String) focused(page).evaluate("one => getComputedStyle(one).outlineStyle");
                assertThat(outline).as("the focus can be seen").isNotEqualTo("none");
                return;
            }
        }
        throw new AssertionError("the key never reaches " + wanted);
    }
}
