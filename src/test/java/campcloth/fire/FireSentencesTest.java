package campcloth.fire;

import static campcloth.fire.FireFixtures.at;
import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import campcloth.fire.FireReason.Factor;
import campcloth.fire.FireWarning.Code;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said, in which order and in which words. */
class FireSentencesTest {

    private static final Exposure SEATED = at(FireRole.SEATED, 2);

    @Test
    void placeComesFirstThenTheStrongestCause() {
        assertThat(factors(loose("silk 100", new ClothWeight(35, 33))))
                .startsWith(Factor.EXPOSURE, Factor.WEIGHT, Factor.FIT);
        assertThat(factors(loose("polyester 65; cotton 35", new ClothWeight(200, 190))))
                .startsWith(Factor.EXPOSURE, Factor.MELT, Factor.FIBRE);
        assertThat(factors(loose("wool 100", new ClothWeight(500, 475))))
                .startsWith(Factor.EXPOSURE, Factor.WEIGHT, Factor.FIBRE);
        assertThat(factors(loose("unknown 100", new ClothWeight(200, 150))))
                .startsWith(Factor.EXPOSURE, Factor.UNNAMED);
    }

    @Test
    void weightIsQuotedAsGivenAndTheLowEndOnlyWhereItCounts() {
        assertThat(sentence(loose("flax 100", new ClothWeight(150, 142.5)), Factor.WEIGHT))
                .startsWith("At 150 g/m2 it is of middle weight");
        assertThat(sentence(loose("unknown 100", new ClothWeight(180, 135)), Factor.WEIGHT))
                .startsWith("Given as 180 g/m2 but not well known, counted as 135 g/m2, it is light");
    }

    @Test
    void severalFibresAreSpokenOfInThePlural() {
        assertThat(sentence(loose("wool 60; silk 40", new ClothWeight(200, 190)), Factor.FIBRE))
                .isEqualTo("None of its fibres burns readily: wool and silk char and burn slowly.");
        assertThat(sentence(loose("wool 100", new ClothWeight(200, 190)), Factor.FIBRE))
                .isEqualTo("None of its fibres burns readily: wool chars and burns slowly.");
        assertThat(sentence(loose("glass 100", new ClothWeight(200, 190)), Factor.FIBRE))
                .isEqualTo("None of its fibres burns readily.");
        assertThat(sentence(loose("polyester 40; cotton 30; flax 30", new ClothWeight(200, 190)), Factor.BLEND))
                .startsWith("Charred cotton and flax hold the molten polyester");
    }

    @Test
    void lightWoolIsNotSaidToBurnReadily() {
        assertThat(warning(loose("wool 100", new ClothWeight(100, 95)), Code.SPREAD))
                .contains("do not burn readily", "light (100 g/m2) and loose", "can still catch")
                .doesNotContain("0 %");
        assertThat(warning(loose("flax 100", new ClothWeight(100, 95)), Code.SPREAD))
                .contains("100 % of its mass burns readily");
    }

    @Test
    void modacrylicCountsAsMeltingAndTheMarshalIsToBeAsked() {
        WornCloth cloth = loose("modacrylic 55; cotton 45", new ClothWeight(220, 209));
        assertThat(FireGrading.grade(cloth, SEATED).meltWarning()).isEqualTo(MeltWarning.WARN);
        assertThat(warning(cloth, Code.MELT)).contains("declaration of flame resistance", "ask");
        assertThat(warning(loose("acrylic 100", new ClothWeight(220, 209)), Code.MELT))
                .doesNotContain("declaration");
    }

    @Test
    void clothThatMeltsOnTheSkinIsNotAdvisedAgainstByNamingWhatToWearBeneath() {
        assertThat(warning(loose("polyester 100", new ClothWeight(200, 190)), Code.MELT_ON_SKIN))
                .startsWith("It touches the skin.")
                .contains("Choose a cloth that does not melt for the layer on the skin.")
                .doesNotContain("beneath");
    }

    @Test
    void gradeInWordsIsNotTakenForTheFaceOfTheCloth() {
        assertThat(List.of(FireGrade.values()))
                .extracting(FireGrade::words)
                .containsExactly("no special concern", "take care", "change something", "not for this");
    }

    @Test
    void nobodyIsToldToKeepADistanceThatIsNearerThanTheirs() {
        WornCloth cloth = loose("polyester 100", new ClothWeight(200, 190));
        assertThat(FireWarnings.of(cloth, at(FireRole.SEATED, 3.2)))
                .extracting(FireWarning::text)
                .noneMatch(text -> text.contains("keep at least"));
        assertThat(FireWarnings.of(cloth, at(FireRole.SEATED, 1.2)))
                .extracting(FireWarning::text)
                .anyMatch(text -> text.contains("keep at least 3.0 m away"));
    }

    private static List<Factor> factors(WornCloth cloth) {
        return FireGrading.grade(cloth, SEATED).reasons().stream()
                .map(FireReason::factor)
                .toList();
    }

    private static String sentence(WornCloth cloth, Factor factor) {
        return FireGrading.grade(cloth, SEATED).reasons().stream()
                .filter(reason -> reason.factor() == factor)
                .map(FireReason::sentence)
                .findFirst()
                .orElseThrow();
    }

    private static String warning(WornCloth cloth, Code code) {
        return FireWarnings.of(cloth, SEATED).stream()
                .filter(warning -> warning.code() == code)
                .map(FireWarning::text)
                .findFirst()
                .orElseThrow();
    }

    private static WornCloth loose(String blend, ClothWeight weight) {
        return new WornCloth(
                FireFixtures.FIBRES.blend(blend),
                weight,
                Surface.PLAIN,
                Finish.NONE,
                Weave.PLAIN,
                Fit.LOOSE,
                Layer.SKIN);
    }
}
