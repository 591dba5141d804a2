package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloths;
import campcloth.cloth.Property;
import campcloth.cloth.ToldMake;
import campcloth.fibre.Blend;
import campcloth.fibre.Fibres;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Somebody finds out what a cloth is: by washing a piece of it, by burning a thread. */
@InBrowser
class FoundOutTest {

    @LocalServerPort
    private int port;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Fibres fibres;

    @ParameterizedTest
    @EnumSource
    void aWashedPieceMakesTheFigureUntilItIsRemoved(Visit visit) {
        String id = linen();
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/" + id + "/swatches/new");
            visitor.holds();
            Locator pair = page.getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName("Along (warp), pair 1"));
            pair.getByLabel("Before").fill("50");
            pair.getByLabel("After wash 1").fill("53");
            visitor.follow(visitor.button("Work it out and keep it"));
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("longer than before");
            assertThat(pair.getByLabel("Before")).hasValue("50");
            visitor.holds();

            pair.getByLabel("After wash 1").fill("47,5");
            pair.getByLabel("After wash 2").fill("47");
            visitor.follow(visitor.button("Work it out and keep it"));
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                    .hasText("What the swatch says");
            Locator row = page.getByRole(AriaRole.ROW).filter(new Locator.FilterOptions().setHasText("6 %"));
            assertThat(row.first()).containsText("1 %");
            assertThat(page.getByText("It still moves: wash and measure again."))
                    .isVisible();
            visitor.holds();
            assertThat(shrinkage(id)).isEqualTo(6);

            visitor.follow(visitor.link("Remove this swatch"));
            visitor.holds();
            visitor.follow(visitor.button("Remove it"));
            assertThat(visitor.path()).isEqualTo("/cloths/" + id);
            assertThat(shrinkage(id)).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingMeasuredIsToldAndMoreRowsKeepWhatWasTyped(Visit visit) {
        String id = linen();
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/" + id + "/swatches/new");
            visitor.follow(visitor.button("Work it out and keep it"));
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("every other measurement");
            page.getByLabel("Drop 1", new Page.GetByLabelOptions().setExact(false))
                    .first()
                    .fill("60");
            visitor.follow(visitor.button("More rows"));
            assertThat(page.getByLabel("Drop 8")).isVisible();
            assertThat(page.getByLabel("Drop 1").first()).hasValue("60");
        }
    }

    @ParameterizedTest
    @EnumSource
    void aBurntThreadIsReadAndKeptAsUnknown(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/burn-test");
            Locator headings = page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(2));
            assertThat(headings.first()).hasText("Before any flame");
            visitor.holds();
            answer(
                    page,
                    "What does the thread do as the flame comes near?",
                    "It melts and draws back before the flame touches it.");
            answer(
                    page,
                    "What is left when it is cold?",
                    "A hard bead or crust that does not crush between the fingers when it is cold.");
            visitor.follow(visitor.button("What can it be?"));
            assertThat(visitor.path()).isEqualTo("/burn-test?warp.approach=melts&warp.residue=hard-bead");
            assertThat(page.getByText("Molten cloth sticks to skin: treat it as cloth that melts")
                            .first())
                    .isVisible();
            assertThat(page.getByText("Look at this next, it would tell most:")).isVisible();
            assertThat(page.getByRole(AriaRole.TABLE).first()).containsText("polyester");
            visitor.holds();

            page.getByLabel("What you call it").fill("<b>from the attic</b>");
            visitor.follow(visitor.button("Keep it as unknown fibre"));
            assertThat(page.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                    .hasText("<b>from the attic</b>");
            String id = visitor.path().substring("/cloths/".length());
            assertThat(cloths.byId(id).orElseThrow().cloth().blend().meltablePercent())
                    .isEqualTo(100);
            assertThat(cloths.byId(id).orElseThrow().cloth().note()).contains("residue hard-bead", "seen to melt");
        }
    }

    @ParameterizedTest
    @EnumSource
    void unsureStaysUnsure(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/burn-test");
            visitor.follow(visitor.button("What can it be?"));
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("Nothing was answered yet");
            assertThat(page.getByRole(AriaRole.ALERT)).isFocused();
            assertThat(visitor.heading("What it tells")).hasCount(0);
            visitor.holds();
            answer(page, "What does it do when it is taken out of the flame?", "It goes out by itself.");
            visitor.follow(visitor.button("What can it be?"));
            assertThat(page.getByText("Unsure. Answer the next question").first())
                    .isVisible();
            assertThat(page.getByText("That does not show that it does not").first())
                    .isVisible();
            visitor.holds();
        }
    }

    private static void answer(Page page, String question, String words) {
        page.getByRole(AriaRole.GROUP, new Page.GetByRoleOptions().setName(question))
                .first()
                .getByLabel(words)
                .check();
    }

    private double shrinkage(String id) {
        return cloths.byId(id)
                .orElseThrow()
                .cloth()
                .required(Property.SHRINK_WARP_PERCENT)
                .value();
    }

    private String linen() {
        ToldMake nothing =
                new ToldMake(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        return cloths.add(nothing.cloth(
                        "Linen from the chest",
                        Blend.pure(fibres.require("flax")),
                        Map.of(Property.SHRINK_WARP_PERCENT, Figure.exact(1, Basis.DECLARED, "stated by the maker")),
                        ""))
                .id();
    }
}
