package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import campcloth.figure.Refused;
import campcloth.garment.Measurements;
import campcloth.garment.Options;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Skirts, aprons and hoods laid out. */
class SkirtPlanTest {

    @ParameterizedTest
    @CsvSource({
        "gored-skirt, 140, false",
        "gored-skirt, 70, true",
        "wrapped-skirt, 140, false",
        "wrapped-skirt, 60, true",
        "apron, 60, false",
        "apron, 140, true",
        "hood, 140, false",
        "hood, 60, true"
    })
    void liesOnTheCloth(String design, double widthCm, boolean nap) {
        CuttingPlan plan = plan(design, Options.USUAL, widthCm, nap);
        PlacedPieces.assertHold(plan, design + " on " + widthCm);
        assertThat(plan.placements()).isNotEmpty();
        if (nap) {
            assertThat(plan.placements()).noneMatch(PlacedPiece::turned);
        }
    }

    @Test
    void goresHeadToTailTakeNoMoreThanGoresUpright() {
        Options wide = Options.USUAL.with("sweepCm", 400);
        double turned = plan("gored-skirt", wide, 140, false).netLengthCm();
        double upright = plan("gored-skirt", wide, 140, true).netLengthCm();
        assertThat(turned).isLessThanOrEqualTo(upright + 1e-6);
    }

    @Test
    void tooWideGoresAreRefusedWithMoreOfThem() {
        assertThatThrownBy(() -> plan("gored-skirt", Options.USUAL.with("sweepCm", 420), 60, false))
                .isInstanceOfSatisfying(Refused.class, refused -> {
                    assertThat(refused.refusals().get(0).field()).isEqualTo("cloth.widthCm");
                    assertThat(refused.refusals().get(0).remedy()).contains("cut it in 12 gores");
                });
    }

    private static CuttingPlan plan(String design, Options options, double widthCm, boolean nap) {
        ClothToCut cloth = Orders.washed(widthCm, 0, 0);
        return Orders.PLANNER.plan(CuttingOrder.of(
                nap ? Orders.withNap(cloth) : cloth,
                new CuttingOrder.Line(design, 1, Measurements.of(Map.of()), options)));
    }
}
