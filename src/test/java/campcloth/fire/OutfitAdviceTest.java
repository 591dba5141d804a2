package campcloth.fire;

import static campcloth.fire.FireFixtures.at;
import static campcloth.fire.FireFixtures.event;
import static campcloth.fire.FireFixtures.fire;
import static campcloth.fire.FireFixtures.mostMeltable;
import static campcloth.fire.FireFixtures.plain;
import static campcloth.fire.Outfits.part;
import static campcloth.fire.Outfits.untold;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.event.Event;
import campcloth.event.FireRole;
import campcloth.fire.FireJudgement.Gate;
import campcloth.fire.FireWarning.Code;
import campcloth.fire.FireWarning.Severity;
import campcloth.fire.RuleOutcome.Outcome;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Whole outfits: what is sewn in, what is worn besides, what is told of them. */
class OutfitAdviceTest {

    private static final OutfitAdvice ADVICE = new OutfitAdvice(new FireAdvice(new FireRules(FireFixtures.FIBRES)));
    private static final Wear COAT = new Wear(false, Layer.OUTER, Fit.CLOSE, false, 60, 2);
    private static final WornCloth WOOL = plain("wool 100", 500);

    @Test
    void aForbiddenLiningRulesOutTheGarmentAndIsNamed() {
        Event camp = event(List.of(mostMeltable(33, Optional.empty())), fire(FireRole.PASSING, 6));
        FireJudgement judged = garment(Outfits.of(part(Kind.LINING, "polyester 100", 200)), camp);
        assertThat(garment(Outfit.UNTOLD, camp).gate()).isEqualTo(Gate.CLEAR);
        assertThat(judged.gate()).isEqualTo(Gate.RULED_OUT);
        assertThat(judged.rules()).singleElement().satisfies(rule -> {
            assertThat(rule.outcome()).isEqualTo(Outcome.FORBIDDEN);
            assertThat(rule.because()).startsWith("Lining (cloth): 100 % of it melts");
        });
        assertThat(judged.worstPart().orElseThrow().part().name()).isEqualTo("lining");
    }

    @Test
    void aShirtIsNotTheGarmentsFaultAndIsJudgedByItself() {
        Event camp = event(List.of(), fire(FireRole.SEATED, 2));
        Outfit outfit = Outfits.of(part(Kind.SHIRT, "polyester 100", 120));
        assertThat(garment(outfit, camp).gate())
                .isEqualTo(garment(Outfit.UNTOLD, camp).gate());
        assertThat(ADVICE.wornBesides(outfit, camp)).singleElement().satisfies(shirt -> {
            assertThat(shirt.judgement().gate()).isEqualTo(Gate.RULED_OUT);
            assertThat(shirt.judgement().warnings())
                    .anyMatch(w -> w.code() == Code.MELT_ON_SKIN
                            && w.text().startsWith("Shirt (cloth): It touches the skin.")
                            && w.text().contains("wool coat"));
        });
    }

    @Test
    void polyesterThreadAsksForCottonAtTheFlameAndIsANoteWhereOneSits() {
        Outfit outfit = Outfits.of(part(Kind.THREAD, "polyester 100", 100));
        FireJudgement cooking = garment(outfit, event(List.of(), fire(FireRole.COOKING)));
        assertThat(cooking.gate()).isEqualTo(Gate.CAUTION);
        assertThat(cooking.warnings())
                .anyMatch(w -> w.code() == Code.THREAD
                        && w.severity() == Severity.CAUTION
                        && w.text().contains("1 % of the garment's mass")
                        && w.text().contains("Sew with cotton, linen or silk thread."));
        FireJudgement seated = garment(outfit, event(List.of(), fire(FireRole.SEATED, 2)));
        assertThat(seated.gate()).isEqualTo(Gate.CLEAR);
        assertThat(garment(Outfits.of(part(Kind.THREAD, "flax 100", 100)), event(List.of(), fire(FireRole.COOKING)))
                        .warnings())
                .noneMatch(w -> w.code() == Code.THREAD);
    }

    @Test
    void aShareRuleCountsThreadAsTheShareItIs() {
        Outfit outfit = Outfits.of(part(Kind.THREAD, "polyester 100", 100));
        Event third = event(List.of(mostMeltable(33, Optional.empty())), fire(FireRole.PASSING, 6));
        Event none = event(List.of(mostMeltable(0, Optional.empty())), fire(FireRole.PASSING, 6));
        assertThat(garment(outfit, third).rules().get(0).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(garment(outfit, none).rules().get(0).outcome()).isEqualTo(Outcome.FORBIDDEN);
    }

    @Test
    void cottonInALiningHoldsTheMeltOfTheCloth() {
        WornCloth polyester = plain("polyester 100", 300);
        assertThat(scaffolds(polyester, Outfits.of(part(Kind.LINING, "cotton 100", 150))))
                .singleElement()
                .asString()
                .contains("charred cotton in the lining holds the molten polyester");
        assertThat(scaffolds(polyester, Outfits.of(part(Kind.THREAD, "cotton 100", 100))))
                .singleElement()
                .asString()
                .contains("sewing thread");
        assertThat(scaffolds(WOOL, Outfits.of(part(Kind.LINING, "cotton 100", 150))))
                .isEmpty();
        assertThat(scaffolds(polyester, Outfits.of(part(Kind.LINING, "wool 100", 150))))
                .isEmpty();
    }

    @Test
    void aNamedPartOfUntoldClothIsTheWorstAndFootwearIsNotJudged() {
        OutfitHazard lining = Outfits.grade(WOOL, Outfits.of(untold(Kind.LINING)), at(FireRole.SEATED, 2));
        assertThat(lining.grade()).isEqualTo(FireGrade.SEVERE);
        assertThat(lining.warnings())
                .anyMatch(
                        w -> w.code() == Code.ASSUMED && w.text().startsWith("Lining: nobody said what it is made of"));
        OutfitHazard shoes = Outfits.grade(WOOL, Outfits.of(untold(Kind.FOOTWEAR)), at(FireRole.SEATED, 2));
        assertThat(shoes.parts()).hasSize(1);
        assertThat(shoes.notTold()).hasSize(2).last().asString().contains("footwear");
    }

    @Test
    void whatNobodyNamedIsListed() {
        assertThat(WornOutfit.notTold(Outfit.UNTOLD))
                .containsExactly(
                        "Not told, and not judged for fire: lining, sewing thread and shirt. Their fibres count"
                                + " too, if there are any.");
        assertThat(WornOutfit.notTold(
                        Outfits.of(untold(Kind.LINING), untold(Kind.THREAD), untold(Kind.WARM_UNDERWEAR))))
                .isEmpty();
    }

    private static FireJudgement garment(Outfit outfit, Event event) {
        return ADVICE.ofGarment(WornCloth.of(Outfits.cloth(WOOL), COAT), outfit, event);
    }

    private static List<String> scaffolds(WornCloth garment, Outfit outfit) {
        return Outfits.grade(garment, outfit, at(FireRole.SEATED, 2)).warnings().stream()
                .filter(w -> w.code() == Code.SCAFFOLD)
                .map(FireWarning::text)
                .toList();
    }
}
