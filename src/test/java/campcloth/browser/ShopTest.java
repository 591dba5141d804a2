package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.SelectOption;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A bale in the hand, tried as somebody does who stands in the shop. */
@InBrowser
class ShopTest {

    private static final int SCREEN_PX = 740;

    /** What the field takes from somebody who types or pastes. */
    private static final int MOST_TYPED = 2000;

    @LocalServerPort
    private int port;

    @ParameterizedTest
    @EnumSource
    void oneFormOneAnswerOnOneScreen(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/shop");
            visitor.holds();
            page.getByLabel("What the label says").fill("65 % polyester 35 % cotton");
            page.getByLabel("Width").fill("150,5");
            ask(visitor, "Tunic", "Summer");
            assertThat(verdict(page)).hasText("Ruled out");
            assertThat(page.locator("#may")).containsText("Stop");
            assertThat(page.locator("#much")).containsText("of cloth 150.5 cm wide");
            assertThat(page.locator("#watch")).containsText("Wash it before cutting");
            visitor.holds();
            if (visit.name().startsWith("PHONE")) {
                onTheFirstScreen(page);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void withoutALabelItIsTheWorstItCouldBe(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/shop");
            page.getByLabel("I do not know what it is made of").check();
            ask(visitor, "Cloak", "Autumn");
            assertThat(verdict(page)).hasText("Ruled out");
            assertThat(page.locator("#may")).containsText("No label");
            assertThat(page.locator("#may").getByRole(AriaRole.LINK)).hasAttribute("href", "/burn-test");
            if (visit.name().startsWith("PHONE")) {
                onTheFirstScreen(page);
            }
            visitor.holds();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatCannotBeReadIsMarkedAndAReadingCanBeTaken(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/shop");
            page.getByLabel("What the label says").fill("80% AC 20% WO");
            ask(visitor, "Tunic", "Summer");
            assertThat(verdict(page)).hasText("Ruled out");
            assertThat(page.locator("#may")).containsText("cannot be read without guessing");
            assertThat(page.locator("mark")).hasText("AC");
            visitor.holds();
            if (visit.name().startsWith("PHONE")) {
                onTheFirstScreen(page);
            }
            visitor.follow(visitor.link("80% acrylic 20% WO"));
            assertThat(page.locator("#may")).not().containsText("cannot be read");
            assertThat(page.locator("#answer")).containsText("80 % acrylic, 20 % wool");
        }
    }

    @ParameterizedTest
    @EnumSource
    void keptAsAClothOfMyOwn(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/shop");
            page.getByLabel("What the label says").fill("100% Leinen");
            page.getByLabel("Weight, if it stands there").fill("220");
            ask(visitor, "Tunic", "Summer");
            assertThat(verdict(page)).not().hasText("Ruled out");
            page.getByLabel("Name, to keep it by").fill("Leinen vom Markt");
            visitor.follow(visitor.button("Keep as a cloth of mine"));
            assertThat(visitor.path()).matches("/cloths/[^/]+");
        }
    }

    @ParameterizedTest
    @EnumSource
    void inchesAndYards(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/shop");
            visitor.follow(visitor.button("Show inches and ounces"));
            page.getByLabel("What the label says").fill("100% wool");
            page.getByLabel("Width").fill("59");
            page.getByLabel("Weight, if it stands there").fill("8.5");
            page.getByText("Price, treatment").click();
            page.getByLabel("Price").fill("12");
            page.getByLabel("Currency").selectOption("USD");
            ask(visitor, "Tunic", "Autumn");
            assertThat(page.locator("#much .shop-figure")).hasText(Pattern.compile(".* yd"));
            assertThat(page.locator("#much")).containsText("of cloth 59 in wide");
            assertThat(page.locator("#much")).containsText("USD");
            assertThat(page.getByLabel("Width")).hasValue("59");
            assertThat(page.getByLabel("Price")).hasValue("12");
        }
    }

    @ParameterizedTest
    @EnumSource
    void tooNarrowIsToldWithWhatHelps(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/shop");
            page.getByLabel("What the label says").fill("100% cotton");
            page.getByLabel("Width").fill("45");
            ask(visitor, "Tunic", "Summer");
            assertThat(page.locator("#much")).containsText("Too narrow");
            assertThat(page.locator("#much")).containsText("take cloth at least");
            visitor.holds();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsRefusedStandsAtItsField(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/shop");
            page.getByLabel("What the label says").fill("100% cotton");
            page.getByLabel("Width").fill("wide");
            visitor.button("May I?").click();
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("Write a number with digits");
            assertThat(page.getByLabel("Width")).hasValue("wide");
            assertThat(page.locator("#answer")).hasCount(0);
            visitor.holds();
        }
    }

    /** Where no scripts run, none of these could. */
    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE"})
    void hostileLabelsAreText(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            for (String hostile : List.of(
                    "<script>alert(1)</script>",
                    "\"><svg onload=alert(1)>",
                    "\u202e100% nottoc \u2066wool",
                    "${7*7} #{shop.title} __${7*7}__",
                    "x".repeat(10_000))) {
                Page page = visitor.at("/shop");
                page.getByLabel("What the label says").fill(hostile);
                ask(visitor, "Tunic", "Summer");
                assertThat(verdict(page)).hasText("Ruled out");
                assertThat(page.locator("#may")).containsText("cannot be read");
                assertThat(page.locator("svg")).hasCount(0);
                assertThat(page.getByLabel("What the label says"))
                        .hasValue(hostile.substring(0, Math.min(MOST_TYPED, hostile.length())));
                Accessible.fitsItsScreen(page);
            }
        }
    }

    private static void ask(Visitor visitor, String garment, String season) {
        Page page = visitor.page();
        page.getByLabel("Garment", new Page.GetByLabelOptions().setExact(true))
                .selectOption(new SelectOption().setLabel(garment));
        page.getByLabel("Size", new Page.GetByLabelOptions().setExact(true)).selectOption("W-M");
        page.getByLabel("Season", new Page.GetByLabelOptions().setExact(true))
                .selectOption(new SelectOption().setLabel(season));
        visitor.button("May I?").click();
        assertThat(page.locator("#answer")).isVisible();
        visitor.rests();
    }

    private static Locator verdict(Page page) {
        return page.locator("#may .verdict");
    }

    /** Verdict, length and what to watch, where the page stands after the answer came. */
    private static void onTheFirstScreen(Page page) {
        assertThat(page.locator("#answer")).isInViewport();
        for (String part : List.of("#may", "#much", "#watch")) {
            BoundingBox box = page.locator(part).boundingBox();
            assertThat(box.y).as("top of %s", part).isGreaterThanOrEqualTo(-1);
            assertThat(box.y + box.height).as("bottom of %s", part).isLessThanOrEqualTo(SCREEN_PX);
        }
    }
}
