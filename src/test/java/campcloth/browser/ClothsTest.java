package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloths;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Cloths as people look for them, read and compare them. */
@InBrowser
class ClothsTest {

    private static final String LINEN = "linen-plain-185";

    @LocalServerPort
    private int port;

    @Autowired
    private Cloths cloths;

    @ParameterizedTest
    @EnumSource
    void theCatalogueIsSearchedAndNarrowed(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths");
            visitor.holds();
            page.getByLabel("Words in name, fibres or note").fill("medium linen");
            visitor.button("Search").click();
            assertThat(visitor.link("medium linen")).isVisible();
            assertThat(page.locator("#told")).containsText("Shown: 1 to");
            page.locator("summary")
                    .filter(new Locator.FilterOptions().setHasText("Narrow down by"))
                    .click();
            page.locator("#weightClass-VERY_HEAVY").check();
            if (!visit.scripts()) {
                visitor.button("Narrow down").click();
            }
            assertThat(visitor.link("medium linen")).hasCount(0);
            visitor.holds();
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
            visitor.link("Leave the words out").click();
            assertThat(page.locator(".hit")).hasCount(20);
            visitor.button("More cloths").click();
            assertThat(page.locator("#told")).containsText("Shown: 21 to");
        }
    }

    @ParameterizedTest
    @EnumSource
    void aClothShowsAllThatIsKnownAndHowSurely(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/" + LINEN);
            assertThat(visitor.heading("medium linen").first()).isVisible();
            assertThat(page.getByText("usual for such cloth").first()).isVisible();
            assertThat(visitor.heading("How it burns")).isVisible();
            visitor.holds();
            visitor.link("The weight by which a generic cloth of the catalogue is defined")
                    .click();
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
            visitor.button("Compare the ticked ones").click();
            assertThat(visitor.heading("Figure by figure")).isVisible();
            assertThat(page.locator("table.beside thead th")).hasCount(4);
            visitor.holds();
            String fleece =
                    cloths.add(NamedCloth.of(cloths, "Camp blanket " + visit, "polyester")).id();
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
            visitor.button("More cloths").click();
            assertThat(page.locator("#told")).containsText("Shown: 21 to");
            assertThat(page.locator("#chosen-" + one)).isChecked();
            String other = tickFirst(page);
            visitor.holds();
            visitor.button("Cloths before").click();
            assertThat(page.locator("#told")).containsText("Shown: 1 to");
            assertThat(page.locator("#tick-" + one)).isChecked();
            assertThat(page.locator("#chosen-" + other)).isChecked();
            page.getByLabel("Words in name, fibres or note").fill("qqzzxxjj");
            visitor.button("Search").click();
            assertThat(visitor.heading("Nothing matches")).isVisible();
            assertThat(page.locator("#chosen-" + one)).isChecked();
            visitor.button("Compare the ticked ones").click();
            assertThat(visitor.heading("Figure by figure")).isVisible();
            assertThat(visitor.path()).startsWith("/cloths/compare?cloth=").contains(one, other);
            assertThat(visitor.path()).doesNotContain("qqzzxxjj");
        }
    }

    private static String tickFirst(Page page) {
        Locator first = page.locator(".hit input[type=checkbox]").first();
        first.check();
        return first.inputValue();
    }
}
