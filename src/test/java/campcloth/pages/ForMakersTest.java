package campcloth.pages;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.ShippedCatalogue;
import campcloth.figure.Refused;
import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Measurements;
import campcloth.garment.Options;
import campcloth.garment.Sizes;
import campcloth.plan.ClothToCut;
import campcloth.plan.CuttingOrder;
import campcloth.plan.CuttingPlan;
import campcloth.plan.CuttingPlanner;
import campcloth.plan.Fold;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a maker reads of a plan names nothing by a key that only programs know. */
class ForMakersTest {

    private static final Pattern KEY = Pattern.compile("\\b[a-z]+[A-Z][A-Za-z]*\\b");

    @Test
    void takesTheOptionAwayAndLeavesTheRemedy() {
        assertThat(ForMakers.words("Leave 4 cm at hem and cuffs (options hemAllowanceCm and cuffAllowanceCm)."))
                .isEqualTo("Leave 4 cm at hem and cuffs.");
        assertThat(ForMakers.words(
                        "seam allowances of 1.6 cm instead of 2 (option seamAllowanceCm 1.6), 180 cm to buy"))
                .isEqualTo("seam allowances of 1.6 cm instead of 2, 180 cm to buy");
        assertThat(ForMakers.words("down the back (option backOnFold false)")).isEqualTo("down the back");
        assertThat(ForMakers.words("as usual (common practice, no source)"))
                .isEqualTo("as usual (common practice, no source)");
    }

    @Test
    void noSentenceOfAPlanNamesAKey() {
        Sizes sizes = ShippedCatalogue.get().sizes();
        for (Design design : Designs.all()) {
            Measurements wearer = Measurements.of(Map.of()).ofSize(sizes.named("M-L"));
            List<String> sentences = new ArrayList<>(design.assumptions(wearer));
            for (double widthCm : List.of(40.0, 70.0, 150.0)) {
                sentences.addAll(planned(design, wearer, widthCm));
            }
            assertThat(ForMakers.words(sentences))
                    .as(design.key())
                    .isNotEmpty()
                    .noneMatch(sentence -> KEY.matcher(sentence).find());
        }
    }

    private static List<String> planned(Design design, Measurements wearer, double widthCm) {
        CuttingOrder order = new CuttingOrder(
                ClothToCut.plain(widthCm, 5, 3, 250, true),
                List.of(new CuttingOrder.Line(design.key(), 1, wearer, Options.USUAL)),
                Optional.of(100.0),
                Fold.ANY,
                CuttingOrder.USUAL_STEP_CM);
        try {
            CuttingPlan plan = new CuttingPlanner(0.05).plan(order);
            List<String> sentences = new ArrayList<>(plan.notes());
            plan.remnant().ifPresent(answer -> sentences.addAll(answer.wouldHelp()));
            return sentences;
        } catch (Refused refused) {
            return refused.refusals().stream()
                    .flatMap(refusal -> Stream.of(refusal.because(), refusal.remedy()))
                    .toList();
        }
    }
}
