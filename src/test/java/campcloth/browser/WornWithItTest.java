package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.errand.Errands;
import campcloth.errand.WantedGarment;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What is worn over and under the garment: told on the form, carried from page to page, kept on the sheet. */
@InBrowser
class WornWithItTest {

    private static final String CLOTH = "wool-diamond-twill-260";
    private static final String GARMENT = "season=SUMMER&design=tunic&size=M-M";
    private static final String WORN = "&under%5B0%5D.kind=SHIRT&under%5B0%5D.cloth=LINEN&over%5B0%5D.kind=CLOAK"
            + "&over%5B0%5D.named=kersey&over%5B0%5D.when=COOL";
    private static final String FIRST_UNDER = "Under it, or on the legs: 1";
    private static final String SECOND_UNDER = "Under it, or on the legs: 2";
    private static final String FIRST_OVER = "Over it, or on head, hands and feet: 1";

    @LocalServerPort
    private int port;

    @Autowired
    private Errands errands;

    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE", "PHONE_WITHOUT_SCRIPTS"})
    void fromTheFormToTheSheet(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/plan?" + GARMENT);
            assertThat(row(page, FIRST_UNDER)).not().isVisible();
            page.getByText("What is worn over and under it").click();
            row(page, FIRST_UNDER).getByLabel("What is worn").selectOption("shirt");
            row(page, FIRST_UNDER).getByLabel("What it is made of").selectOption("linen, as for shirts");
            assertThat(row(page, SECOND_UNDER)).hasCount(0);
            visitor.follow(visitor.button("Show another row"));
            assertThat(row(page, FIRST_UNDER).getByLabel("What is worn")).hasValue("SHIRT");
            assertThat(row(page, SECOND_UNDER)).isVisible();
            visitor.holds();

            row(page, SECOND_UNDER).getByLabel("What it is made of").selectOption("polyester");
            row(page, FIRST_OVER).getByLabel("What is worn").selectOption("cloak");
            row(page, FIRST_OVER).getByLabel("Or a cloth from Cloths").fill("qwxz <b>");
            visitor.follow(visitor.button("Rank the cloths"));
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("it is not said what is worn; choose it");
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("is the name of no cloth in the catalogue");
            assertThat(row(page, FIRST_OVER).getByLabel("Or a cloth from Cloths"))
                    .hasValue("qwxz <b>");
            assertThat(row(page, SECOND_UNDER).getByLabel("What it is made of")).hasValue("POLYESTER");
            visitor.holds();

            row(page, FIRST_OVER).getByLabel("Or a cloth from Cloths").fill("kersey");
            row(page, FIRST_OVER).getByLabel("When it is worn").selectOption("COOL");
            row(page, SECOND_UNDER).getByLabel("What it is made of").selectOption("not said");
            visitor.follow(visitor.button("Rank the cloths"));
            assertThat(page.getByText("shirt: shirt linen, 100 % flax (linen)").first())
                    .isVisible();
            assertThat(page.getByText("cloak: kersey").first()).isVisible();
            visitor.holds();

            visitor.follow(visitor.link("Change event or garment"));
            assertThat(row(page, FIRST_OVER).getByLabel("Or a cloth from Cloths"))
                    .hasValue("kersey");
            page.goBack();
            visitor.follow(page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Choose this cloth"))
                    .first());
            assertThat(page.getByText("cloak: kersey")).isVisible();
            visitor.follow(visitor.button("Make the plan sheet"));
            assertThat(page.getByText("Worn under it")).isVisible();
            assertThat(page.getByText("cloak: kersey").first()).isVisible();
            visitor.holds();
        }
    }

    @Test
    void everyPageTellsIt() {
        SheetSamples over = new SheetSamples(port);
        String asked = "?" + GARMENT + WORN;
        for (String path : new String[] {
            "/plan/compare" + asked + "&cloth=" + CLOTH + "&cloth=linen-plain-185",
            "/plan/better" + asked + "&cloth=" + CLOTH,
            "/plan/buy" + asked + "&cloth=" + CLOTH,
            "/plan/firmness" + asked + "&text=kersey",
            "/shop" + asked + "&label=100%25+wool"
        }) {
            String page = new String(over.get(path).body(), StandardCharsets.UTF_8);
            assertThat(page)
                    .as(path)
                    .doesNotContain("??")
                    .contains("shirt: shirt linen, 100 % flax (linen)", "cloak: kersey, 100 % wool (only in ");
        }
        String shop =
                new String(over.get("/shop" + asked + "&label=100%25+wool").body(), StandardCharsets.UTF_8);
        assertThat(shop).contains("name=\"over[0].when\" value=\"COOL\"", "name=\"under[0].cloth\" value=\"LINEN\"");
    }

    @Test
    void theSheetKeepsItAndThePaperTellsIt() {
        SheetSamples over = new SheetSamples(port);
        String path = over.made(GARMENT + WORN + "&under%5B1%5D.kind=HOSE&under%5B1%5D.cloth=POLYESTER", CLOTH, "");
        WantedGarment kept = errands.byId(path.substring("/sheets/".length()))
                .orElseThrow()
                .errand()
                .garment();
        assertThat(kept.outfit().parts())
                .extracting(OutfitPart::kind)
                .containsExactly(Kind.SHIRT, Kind.HOSE, Kind.CLOAK);
        assertThat(kept.outfit().parts().get(2).cloth().orElseThrow().name()).isEqualTo("kersey");
        Printed paper = Printed.of(over.get(path + ".pdf").body());
        paper.fits(210, 297);
        assertThat(paper.text().replaceAll("\\s+", " "))
                .contains(
                        "Worn under it",
                        "shirt: shirt linen, 100 % flax (linen)",
                        "cloak: kersey, 100 % wool (only in ");
        String sheet = new String(over.get(path).body(), StandardCharsets.UTF_8);
        assertThat(sheet).contains("Hose or trousers (polyester plain weave): ");
    }

    private static Locator row(Page page, String name) {
        return page.getByRole(
                AriaRole.GROUP, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
