package campcloth.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.cloth.Property;
import campcloth.cloth.ToldFigure;
import campcloth.fibre.Fibres;
import campcloth.figure.Basis;
import campcloth.figure.Figure;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Cloths of one's own, as people describe, change and remove them. */
@InBrowser
class OwnClothsTest {

    private static final String SCRIPT = "<script>document.title='taken'</script>";
    private static final String DRAWING = "</svg><svg onload=\"document.title='taken'\"></svg>";
    private static final String TURNED = "\u202Enenil\u202C פשתן كتان";

    @LocalServerPort
    private int port;

    @Autowired
    private Cloths cloths;

    @Autowired
    private Fibres fibres;

    @ParameterizedTest
    @EnumSource
    void aClothIsReadFromItsLabelKeptChangedAndRemoved(Visit visit) {
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/new");
            visitor.holds();
            page.locator("#name").fill("Market stall " + visit);
            page.locator("#label").fill("70% linen 30%");
            visitor.follow(visitor.button("Read the label"));
            assertThat(page.locator("#label-wrong")).isVisible();
            visitor.holds();
            page.locator("#label").fill("70% linen 30% polyester");
            visitor.follow(visitor.button("Read the label"));
            assertThat(page.getByText("The label was read.")).isVisible();
            assertThat(page.locator("#blend0\\.percent")).hasValue("70");
            page.locator("#figures\\.weightGsm").fill("1900");
            visitor.holds();
            visitor.follow(visitor.button("Keep it"));
            assertThat(visitor.heading("Market stall " + visit).first()).isVisible();
            assertThat(page.getByText("Far from what such cloth lets expect")).isVisible();
            assertThat(page.getByText("Melts or must be taken to: 30 % of its mass."))
                    .isVisible();
            visitor.holds();
            visitor.follow(visitor.link("Edit"));
            page.locator("#figures\\.weightGsm").fill("190");
            page.locator("#name").fill("");
            visitor.follow(visitor.button("Keep it"));
            assertThat(page.locator("#name-wrong")).isVisible();
            assertThat(page.locator("#figures\\.weightGsm")).hasValue("190");
            page.locator("#name").fill("Market stall " + visit);
            visitor.follow(visitor.button("Keep it"));
            assertThat(visitor.link("Remove")).isVisible();
            String id = visitor.path().substring("/cloths/".length());
            assertThat(cloths.byId(id).orElseThrow().cloth().figure(Property.WEIGHT_GSM))
                    .contains(ToldFigure.declared(190));
            visitor.follow(visitor.link("Remove"));
            visitor.holds();
            visitor.follow(visitor.button("Yes, remove it"));
            assertThat(page.getByText("The cloth was removed.")).isVisible();
            assertThat(cloths.byId(id)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsLeftAsItIsKeepsItsSourceAndAStaleFormLosesNothing(Visit visit) {
        Figure usual = new Figure(190.3333, 180, 205, Basis.TYPICAL, "catalogue-weight");
        KeptCloth kept = cloths.add(
                NamedCloth.of(cloths, fibres, "Shared bale " + visit, "cotton").with(Property.WEIGHT_GSM, usual));
        try (Visitor visitor = new Visitor(visit, port)) {
            Page page = visitor.at("/cloths/" + kept.id() + "/edit");
            visitor.follow(visitor.button("Show inches and ounces"));
            page.locator("#note").fill("Third shelf");
            visitor.follow(visitor.button("Keep it"));
            assertThat(page.getByText("Third shelf")).isVisible();
            KeptCloth changed = cloths.byId(kept.id()).orElseThrow();
            assertThat(changed.cloth().figure(Property.WEIGHT_GSM)).contains(usual);
            visitor.follow(visitor.link("Edit"));
            page.locator("#note").fill("Fourth shelf");
            Cloth theirs = changed.cloth().with(Property.WIDTH_CM, ToldFigure.declared(150));
            cloths.replace(kept.id(), changed.version(), theirs);
            visitor.follow(visitor.button("Keep it"));
            assertThat(visitor.heading("Somebody changed this cloth while you typed"))
                    .isVisible();
            assertThat(page.locator("#note")).hasValue("Fourth shelf");
            assertThat(page.locator("td").filter(new Locator.FilterOptions().setHasText("Third shelf")))
                    .isVisible();
            visitor.holds();
            visitor.follow(visitor.button("Keep it"));
            assertThat(visitor.path()).isEqualTo("/cloths/" + kept.id());
            Cloth both = cloths.byId(kept.id()).orElseThrow().cloth();
            assertThat(both.note()).isEqualTo("Fourth shelf");
            assertThat(both.figure(Property.WIDTH_CM)).contains(ToldFigure.declared(150));
            assertThat(both.figure(Property.WEIGHT_GSM)).contains(usual);
        }
    }

    /** Where no scripts run, none of these could. */
    @ParameterizedTest
    @EnumSource(names = {"DESKTOP", "PHONE"})
    void namesAndNotesDoNoHarm(Visit visit) {
        String mark = "Hostilely" + visit.ordinal();
        String long200 = (mark + " " + "w".repeat(200)).substring(0, 200);
        String script = mark + " " + SCRIPT + TURNED;
        Cloth plain = NamedCloth.of(cloths, fibres, "any", "wool");
        Cloth worst = new Cloth(
                script,
                plain.blend(),
                plain.weave(),
                plain.surface(),
                plain.finish(),
                false,
                false,
                Map.of(Property.WEIGHT_GSM, Figure.exact(250, Basis.DECLARED, DRAWING)),
                DRAWING + SCRIPT + TURNED + "w".repeat(1500));
        String one = cloths.add(worst).id();
        String other =
                cloths.add(NamedCloth.of(cloths, fibres, long200, "wool")).id();
        try (Visitor visitor = new Visitor(visit, port)) {
            for (String address : new String[] {
                "/cloths?text=" + mark,
                "/cloths/" + one,
                "/cloths/" + other,
                "/cloths/" + one + "/edit",
                "/cloths/" + one + "/remove",
                "/cloths/compare?cloth=" + one + "&cloth=" + other
            }) {
                Page page = visitor.at(address);
                assertThat(page.locator("svg[onload], main script")).hasCount(0);
                assertThat(page.title()).isNotEqualTo("taken");
                if (address.endsWith("/edit")) {
                    assertThat(page.locator("#name")).hasValue(worst.name());
                    assertThat(page.locator("#note")).hasValue(worst.note());
                } else {
                    assertThat(page.getByText(mark).first()).isAttached();
                }
                visitor.holds();
            }
        }
    }
}
