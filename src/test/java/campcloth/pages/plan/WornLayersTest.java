package campcloth.pages.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.advice.Adviser;
import campcloth.advice.Assessment;
import campcloth.advice.Candidate;
import campcloth.advice.Judged;
import campcloth.advice.Question;
import campcloth.advice.Ranking;
import campcloth.advice.Verdict;
import campcloth.advice.Warning;
import campcloth.cloth.ClothsInMemory;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.ShippedCatalogue;
import campcloth.errand.WornWith;
import campcloth.event.Event;
import campcloth.event.RuleDraft;
import campcloth.event.SafetyRule.Authority;
import campcloth.event.Season;
import campcloth.figure.Refusal;
import campcloth.figure.Refused;
import campcloth.fire.FireAdvice;
import campcloth.fire.FireRules;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What rows of the form become, and what they change in the advice. */
class WornLayersTest {

    private static final ShippedCatalogue CATALOGUE = ShippedCatalogue.get();
    private static final Adviser ADVISER = new Adviser(new FireAdvice(new FireRules(CATALOGUE.fibres())));
    private static final String TUNIC_CLOTH = "wool-diamond-twill-260";

    private final WornLayers layers = new WornLayers(new ClothsInMemory(CATALOGUE.cloths()));
    private final AskedForm form = new AskedForm();

    @BeforeEach
    void tunic() {
        form.design = "tunic";
        form.size = "M-M";
        form.season = Season.SUMMER;
    }

    @Test
    void everyPlainClothIsInTheCatalogue() {
        assertThat(CATALOGUE.cloths().keySet())
                .containsAll(Arrays.stream(PlainCloth.values())
                        .map(PlainCloth::clothId)
                        .toList());
    }

    @Test
    void rowsBecomePartsAndEmptyOnesNothing() {
        form.under.addAll(List.of(new WornForm(), row(Kind.SHIRT, PlainCloth.LINEN), row(Kind.HOSE, null)));
        form.over.add(row(Kind.CLOAK, PlainCloth.WOOL_HEAVY));
        assertThat(form.tellsWorn()).isTrue();
        assertThat(outfit().parts()).extracting(OutfitPart::kind).containsExactly(Kind.SHIRT, Kind.HOSE, Kind.CLOAK);
        assertThat(outfit().parts().get(0).cloth()).contains(CATALOGUE.cloth("linen-plain-150"));
        assertThat(outfit().parts().get(1).cloth()).isEmpty();
        assertThat(WornWith.of(outfit()))
                .isEqualTo(new WornWith(
                        List.of("shirt: shirt linen, 100 % flax (linen)", "hose or trousers, cloth not told"),
                        List.of("cloak: wool broadcloth, 100 % wool")));
        form.under.clear();
        form.over.clear();
        assertThat(outfit()).isEqualTo(Outfit.UNTOLD);
    }

    @Test
    void aClothOfTheCatalogueIsMeantByItsName() {
        WornForm kersey = row(Kind.OVERGARMENT, null);
        kersey.named = "KERSEY";
        form.over.add(kersey);
        assertThat(outfit().parts().get(0).cloth()).contains(CATALOGUE.cloth("wool-kersey-480"));
        kersey.named = "frieze";
        assertThat(outfit().parts().get(0).cloth()).contains(CATALOGUE.cloth("wool-frieze-560"));
    }

    @Test
    void whatCannotBeUsedIsToldAtItsFieldWithWhatWouldHelp() {
        WornForm row = row(null, PlainCloth.LINEN);
        form.under.add(row);
        assertThat(refused()).isEqualTo("under[0].kind: it is not said what is worn; choose it, or empty the row");
        row.kind = Kind.LINING;
        assertThat(refused()).startsWith("under[0].kind: 'lining' is not worn there");
        row.kind = Kind.SHIRT;
        row.named = "kersey";
        assertThat(refused()).startsWith("under[0].named: 'kersey' stands beside what it is made of");
        row.cloth = null;
        row.named = "linen";
        assertThat(refused())
                .startsWith("under[0].named: 'linen' fits ")
                .contains("write the whole name of one, such as 'handkerchief linen");
        row.named = "<script>alert(1)</script>";
        assertThat(refused())
                .isEqualTo(
                        "under[0].named: '<script>alert(1)</script>' is the name of no cloth in the catalogue; empty this and"
                                + " choose what it is made of");
        row.named = "w".repeat(201);
        assertThat(refused()).startsWith("under[0].named: the name has 201 characters");
        form.under.set(0, row(Kind.SHIRT, null));
        for (int i = 0; i < WornForm.MOST; i++) {
            form.under.add(row(Kind.SHIRT, null));
        }
        assertThat(refused()).startsWith("under[4].kind: it is one too many");
    }

    @Test
    void aPlainClothThatIsGoneIsRefused() {
        form.under.add(row(Kind.SHIRT, PlainCloth.SILK));
        WornLayers without = new WornLayers(new ClothsInMemory(List.of()));
        assertThat(refusal(() -> without.of(form, event())).field()).isEqualTo("under[0].cloth");
    }

    @Test
    void inTheCoolIsInTheSpellsThatAre() {
        WornForm cloak = row(Kind.CLOAK, PlainCloth.WOOL_HEAVY);
        cloak.when = WornForm.When.COOL;
        form.over.add(cloak);
        form.day.airC = 25.0;
        form.evening.airC = 15.5;
        form.night.airC = 15.0;
        assertThat(outfit().parts().get(0).spells()).isEqualTo(Set.of("night"));
        assertThat(WornWith.of(outfit()).over().get(0)).endsWith(" (only in \"night\")");
        form.night.airC = 18.0;
        assertThat(outfit().parts().get(0).insulationClo()).contains(0.0);
        assertThat(WornWith.of(outfit()).over().get(0)).endsWith(" (put on in none of the spells)");
        assertThat(ADVISER.wornBesides(question()))
                .as("judged for fire all the same")
                .hasSize(1);
    }

    @Test
    void theInsulationOfTheWholeOutfitCountsForWarmthAndHeat() {
        form.day.airC = 30.0;
        form.evening.airC = 8.0;
        Judged without = judged();
        WornForm cloak = row(Kind.CLOAK, PlainCloth.WOOL_HEAVY);
        form.over.add(cloak);
        Judged always = judged();
        cloak.when = WornForm.When.COOL;
        Judged inTheCool = judged();
        assertThat(score(always, "warmth")).isGreaterThan(score(without, "warmth"));
        assertThat(score(always, "heat")).isLessThan(score(without, "heat"));
        assertThat(score(inTheCool, "warmth")).isGreaterThan(score(without, "warmth"));
        assertThat(score(inTheCool, "heat")).isGreaterThan(score(always, "heat"));
        assertThat(ranking().worn().toString()).contains("TOLD");
    }

    @Test
    void aLayerThatMeltsIsRuledOutByTheRuleAndKeepsEveryClothFromBeingSuitable() {
        form.over.add(row(Kind.OVERGARMENT, PlainCloth.WOOL));
        assertThat(WornLine.of(ADVISER, question()))
                .singleElement()
                .satisfies(line -> assertThat(line.verdict()).isNull());
        Verdict plain = judged().verdict();
        form.over.set(0, row(Kind.OVERGARMENT, PlainCloth.FLEECE));
        WornLine fleece = WornLine.of(ADVISER, question()).get(0);
        assertThat(fleece.over()).isTrue();
        assertThat(fleece.verdict()).isEqualTo(Verdict.RULED_OUT);
        assertThat(fleece.words()).isEqualTo("garment worn over it: polyester fleece, 100 % polyester");
        assertThat(fleece.warnings()).extracting(Warning::severity).contains(Warning.Severity.STOP);
        assertThat(judged().verdict()).isGreaterThan(Verdict.SUITABLE).isGreaterThanOrEqualTo(plain);
        assertThat(judged().warnings())
                .anyMatch(w -> w.text().startsWith("Ruled out of what is worn with it: garment"));
    }

    @Test
    void whatLiesBeneathTakesTheClothOffTheSkin() {
        assertThat(question().wearAtFire().nextToSkin()).isTrue();
        form.under.add(row(Kind.SHIRT, PlainCloth.LINEN));
        assertThat(question().wearAtFire().nextToSkin()).isFalse();
        assertThat(question().wearAtFire().layer()).isNotEqualTo(Layer.SKIN);
    }

    private static WornForm row(@Nullable Kind kind, @Nullable PlainCloth cloth) {
        WornForm row = new WornForm();
        row.kind = kind;
        row.cloth = cloth;
        return row;
    }

    private Event event() {
        Event told = form.event(new NoEvents(), CATALOGUE.seasons()).event();
        return new Event(
                "",
                told.season(),
                told.spells(),
                List.of(RuleDraft.of(Authority.EVENT, "Nothing that melts")
                        .mostMeltable(0)
                        .rule()));
    }

    private Outfit outfit() {
        return layers.of(form, event());
    }

    private Question question() {
        return form.asking(event(), CATALOGUE.sizes(), outfit())
                .about(() -> List.of(new Candidate(TUNIC_CLOTH, CATALOGUE.cloth(TUNIC_CLOTH))))
                .question();
    }

    private Ranking ranking() {
        return ADVISER.rank(question());
    }

    private Judged judged() {
        return ranking().judged().get(0);
    }

    private static double score(Judged judged, String criterion) {
        return judged.criteria().stream()
                .filter(one -> one.criterion().equals(criterion))
                .mapToDouble(Assessment::score)
                .findFirst()
                .orElseThrow();
    }

    private String refused() {
        Refusal refusal = refusal(this::outfit);
        return AskedForm.field(refusal.field()) + ": " + refusal.because() + "; " + refusal.remedy();
    }

    private static Refusal refusal(Runnable asked) {
        Refusal[] told = new Refusal[1];
        assertThatThrownBy(asked::run)
                .isInstanceOfSatisfying(
                        Refused.class, caught -> told[0] = caught.refusals().get(0));
        return told[0];
    }
}
