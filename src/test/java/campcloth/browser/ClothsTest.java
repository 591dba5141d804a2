package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloths;
import campcloth.fibre.Fibres;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Cloths as people look for them, read and compare them. */
@InBrowser
class ClothsTest {

    private static final String LINEN = "linen-plain-185";
    private static final String WORDS = "Words in name, fibres or note";

    /** Nobody measures it in another test, so that its weight is the catalogue's. */
    private static final String AS_IN_THE_CATALOGUE = "linen-plain-280";

    @LocalServerPort
    private int port;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Fibres fibres;

    @ParameterizedTest
    @EnumSource
    void theCatalogueIsSearchedAndNarrowed(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths");
            visitor.holds();
            search(visitor, visit, "medium linen");
            assertThat(hit(page, LINEN)).hasText("medium linen");
            assertThat(page.locator("#told")).containsText("Shown: 1 to");
            page.locator("summary")
                    .filter(new Locator.FilterOptions().setHasText("Narrow down by"))
                    .click();
            page.locator("#weightClass-VERY_HEAVY").check();
            if (!visit.scripts()) {
                visitor.follow(visitor.button("Narrow down"));
            }
            assertThat(hit(page, LINEN)).hasCount(0);
            visitor.holds();
            assertThat(page.locator("#weightClass-VERY_HEAVY")).isChecked();
            visitor.at("/cloths?text=linnen");
            assertThat(page.locator(".hit").first()).isVisible();
            assertThat(page.getByText("These are only named much alike.")).hasCount(0);
            visitor.at("/cloths?text=canvvas");
            assertThat(page.getByText("These are only named much alike.")).isVisible();
            assertThat(page.locator(".hit h2")
                            .filter(new Locator.FilterOptions().setHasText("canvas"))
                            .first())
                    .isVisible();
            visitor.at("/cloths?text=qqzzxxjj&fibre=flax");
            assertThat(visitor.heading("Nothing matches")).isVisible();
            visitor.holds();
            visitor.follow(visitor.link("Leave the words out"));
            assertThat(page.locator(".hit")).hasCount(20);
            visitor.follow(visitor.button("More cloths"));
            assertThat(page.locator("#told")).containsText("Shown: 21 to");
        }
    }

    @ParameterizedTest
    @EnumSource
    void aClothShowsAllThatIsKnownAndHowSurely(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/" + AS_IN_THE_CATALOGUE);
            assertThat(visitor.heading("heavy linen").first()).isVisible();
            assertThat(page.getByText("usual for such cloth").first()).isVisible();
            assertThat(visitor.heading("How it burns")).isVisible();
            visitor.holds();
            visitor.follow(visitor.link("The weight by which a generic cloth of the catalogue is defined"));
            assertThat(visitor.heading("Sources")).isVisible();
            visitor.holds();
            visitor.at("/cloths/completeness");
            visitor.holds();
        }
    }

    @ParameterizedTest
    @EnumSource
    void tickedClothsStandSideBySideWithFireApart(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths?text=medium+linen");
            page.locator("#tick-" + LINEN).check();
            page.locator(".hit input[type=checkbox]:not(:checked)").first().check();
            visitor.follow(visitor.button("Compare the ticked ones"));
            assertThat(visitor.heading("Figure by figure")).isVisible();
            assertThat(page.locator("table.beside thead th")).hasCount(4);
            visitor.holds();
            String fleece = cloths.add(NamedCloth.of(cloths, fibres, "Camp blanket " + visit, "polyester"))
                    .id();
            visitor.at("/cloths/compare?cloth=" + LINEN + "&cloth=" + fleece + "&role=COOKING");
            assertThat(page.getByText("Graded as not for this fire.")).isVisible();
            assertThat(page.getByText("Not named: not for this fire")).isVisible();
            visitor.holds();
            visitor.at("/cloths/compare?cloth=" + LINEN);
            visitor.holds();
        }
    }

    @ParameterizedTest
    @EnumSource
    void ticksOutlastPagingAndNarrowing(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths?origin=CATALOGUE");
            String one = tickFirst(page);
            visitor.follow(visitor.button("More cloths"));
            assertThat(page.locator("#told")).containsText("Shown: 21 to");
            assertThat(page.locator("#chosen-" + one)).isChecked();
            String other = tickFirst(page);
            visitor.holds();
            visitor.follow(visitor.button("Cloths before"));
            assertThat(page.locator("#told")).containsText("Shown: 1 to");
            assertThat(page.locator("#tick-" + one)).isChecked();
            assertThat(page.locator("#chosen-" + other)).isChecked();
            search(visitor, visit, "qqzzxxjj");
            assertThat(visitor.heading("Nothing matches")).isVisible();
            assertThat(page.locator("#chosen-" + one)).isChecked();
            visitor.follow(visitor.button("Compare the ticked ones"));
            assertThat(visitor.heading("Figure by figure")).isVisible();
            assertThat(visitor.path()).startsWith("/cloths/compare?cloth=").contains(one, other);
            assertThat(visitor.path()).doesNotContain("qqzzxxjj");
        }
    }

    /**
     * Types the words and asks for them. What is typed is asked for by itself, too, a moment later: what that brings has come before anything
     * else is done, else it would come between.
     */
    private static void search(Visitor visitor, Visit visit, String words) {
        Page page = visitor.page();
        Locator search = visitor.button("Search");
        if (visit.scripts()) {
            page.waitForResponse(
                    ClothsTest::isFound, () -> page.getByLabel(WORDS).fill(words));
            visitor.rests();
            page.waitForResponse(ClothsTest::isFound, search::click);
            visitor.rests();
        } else {
            page.getByLabel(WORDS).fill(words);
            visitor.follow(search);
        }
    }

    private static boolean isFound(Response answer) {
        return answer.url().contains("/cloths?") && answer.url().contains("text=");
    }

    private static Locator hit(Page page, String id) {
        return page.locator(".hit h2 a[href='/cloths/" + id + "']");
    }

    private static String tickFirst(Page page) {
        Locator first = page.locator(".hit input[type=checkbox]").first();
        first.check();
        return first.inputValue();
    }
}
