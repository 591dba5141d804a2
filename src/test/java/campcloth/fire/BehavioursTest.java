package campcloth.fire;

import static campcloth.fire.FireFixtures.at;
import static campcloth.fire.FireFixtures.plain;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.FlameTreatment;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import campcloth.fire.FireReason.Factor;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each sentence on what a blend, film or treatment does stands where it applies, and nowhere else. */
class BehavioursTest {

    private static final Exposure SEATED = at(FireRole.SEATED, 2);

    @Test
    void lightBlendsOfPlantFibreAndWhatMeltsAreSingledOut() {
        assertThat(said(plain("polyester 65; cotton 35", 135))).anyMatch(s -> s.contains("under 136 g/m2"));
        assertThat(said(plain("polyester 65; cotton 35", 136))).isEmpty();
        assertThat(said(plain("cotton 100", 100))).isEmpty();
        assertThat(said(plain("polyester 100", 100))).isEmpty();
        assertThat(said(plain("cotton 97; elastane 3", 120))).noneMatch(s -> s.contains("136"));
    }

    @Test
    void theLightBlendStandsAheadOfWhatCountsLess() {
        List<Factor> factors = FireGrading.grade(plain("polyester 30; viscose 70", 120), SEATED).reasons().stream()
                .map(FireReason::factor)
                .toList();
        assertThat(factors.indexOf(Factor.BEHAVIOUR)).isLessThan(factors.indexOf(Factor.BLEND));
    }

    @Test
    void viscoseIsToldApartFromCotton() {
        assertThat(said(plain("polyester 50; viscose 50", 200)))
                .containsExactly("Viscose with polyester burns faster than cotton with polyester.");
        assertThat(said(plain("polyester 50; cotton 50", 200))).isEmpty();
        assertThat(said(plain("viscose 100", 200))).isEmpty();
    }

    @Test
    void acrylicBurnsAndDripsAndWoolDoesNotTameIt() {
        assertThat(said(plain("acrylic 100", 300))).singleElement().asString().startsWith("Acrylic burns strongly");
        assertThat(said(plain("wool 50; acrylic 50", 300)))
                .singleElement()
                .asString()
                .startsWith("Wool or hair does not tame acrylic");
        assertThat(said(plain("wool 95; acrylic 5", 300))).isEmpty();
    }

    @Test
    void modacrylicElastaneAndChlorofibreHaveTheirOwnWords() {
        assertThat(said(plain("modacrylic 60; cotton 40", 220)))
                .singleElement()
                .asString()
                .startsWith("Modacrylic");
        assertThat(said(plain("cotton 97; elastane 3", 220)))
                .singleElement()
                .asString()
                .startsWith("Elastane");
        assertThat(said(plain("polyester 97; elastane 3", 220))).isEmpty();
        assertThat(said(plain("chlorofibre 100", 220)))
                .singleElement()
                .asString()
                .startsWith("Chlorofibre");
    }

    @Test
    void ofACoatingItIsSaidThatNobodyKnowsWhatItIs() {
        WornCloth coated = new WornCloth(
                FireFixtures.FIBRES.blend("cotton 100"),
                200,
                Surface.PLAIN,
                Finish.COATED,
                Weave.PLAIN,
                Fit.CLOSE,
                Layer.OUTER);
        assertThat(said(coated)).singleElement().asString().contains("polyurethane", "polyvinyl chloride");
        assertThat(said(plain("cotton 100", 200))).isEmpty();
    }

    @Test
    void aTreatmentIsToldForWhatItIs() {
        WornCloth cotton = plain("cotton 100", 200);
        assertThat(treatment(cotton, SEATED)).isEmpty();
        assertThat(treatment(cotton.treated(FlameTreatment.DECLARED), SEATED))
                .singleElement()
                .asString()
                .contains("first wash", "counts as not treated");
        assertThat(treatment(cotton.treated(FlameTreatment.DECLARED_DURABLE), SEATED))
                .singleElement()
                .asString()
                .contains("one step less", "hard water and bleach", "papers");
        assertThat(treatment(cotton.treated(FlameTreatment.DECLARED_DURABLE), at(FireRole.COOKING)))
                .singleElement()
                .asString()
                .contains("counts for nothing where flame can touch");
        assertThat(treatment(plain("wool 100", 200).treated(FlameTreatment.DECLARED_DURABLE), SEATED))
                .singleElement()
                .asString()
                .contains("counts for nothing here");
    }

    @Test
    void aDurableTreatmentCountsOnPlantFibreWhereOneSits() {
        WornCloth cotton = plain("cotton 100", 200);
        WornCloth treated = cotton.treated(FlameTreatment.DECLARED_DURABLE);
        assertThat(FireGrading.grade(treated, SEATED).spread())
                .isLessThan(FireGrading.grade(cotton, SEATED).spread());
        WornCloth blend = plain("polyester 50; cotton 50", 200);
        assertThat(FireGrading.grade(blend.treated(FlameTreatment.DECLARED_DURABLE), SEATED)
                        .spread())
                .isEqualTo(FireGrading.grade(blend, SEATED).spread());
    }

    private static List<String> said(WornCloth cloth) {
        return sentences(cloth, SEATED, Factor.BEHAVIOUR);
    }

    private static List<String> treatment(WornCloth cloth, Exposure exposure) {
        return sentences(cloth, exposure, Factor.TREATMENT);
    }

    private static List<String> sentences(WornCloth cloth, Exposure exposure, Factor factor) {
        return FireGrading.grade(cloth, exposure).reasons().stream()
                .filter(reason -> reason.factor() == factor)
                .map(FireReason::sentence)
                .toList();
    }
}
