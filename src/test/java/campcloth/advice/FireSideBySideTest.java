package campcloth.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.cloth.Contrast;
import campcloth.cloth.Estimates;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.ShippedCatalogue;
import campcloth.event.FireRole;
import campcloth.fire.Exposure;
import campcloth.fire.FireCautions;
import campcloth.fire.FireGrade;
import campcloth.fire.FireGrading;
import campcloth.fire.WornCloth;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Cloths side by side at one fire. */
class FireSideBySideTest {

    private static final Exposure TENDING = new Exposure(FireRole.TENDING, Optional.empty(), Optional.empty());

    private static List<Cloth> cloths(String... ids) {
        return Stream.of(ids)
                .map(id -> Estimates.complete(ShippedCatalogue.get().cloth(id)))
                .toList();
    }

    @Test
    void fullWoolAndThinPolyesterDifferClearlyAndThePolyesterIsRuledOut() {
        FireSideBySide fire =
                FireSideBySide.of(cloths("wool-melton-500", "polyester-satin-90"), TENDING, Fit.LOOSE, Layer.SKIN);
        assertThat(fire.contrast()).isEqualTo(Contrast.CLEAR);
        assertThat(fire.rulesOut(0)).isFalse();
        assertThat(fire.rulesOut(1)).isTrue();
        assertThat(fire.cautions()).contains(FireCautions.RULES_WIN, FireCautions.FIRE_BAN);
    }

    @Test
    void theSameGradeIsNoDifference() {
        FireSideBySide fire =
                FireSideBySide.of(cloths("wool-melton-500", "wool-melton-600"), TENDING, Fit.CLOSE, Layer.OUTER);
        assertThat(fire.contrast()).isEqualTo(Contrast.WITHIN_ERROR);
    }

    @Test
    void eachClothIsGradedAsTheFireGradesIt() {
        for (Cloth cloth : ShippedCatalogue.get().cloths().values()) {
            Cloth completed = Estimates.complete(cloth);
            FireSideBySide fire = FireSideBySide.of(List.of(completed), TENDING, Fit.LOOSE, Layer.SKIN);
            assertThat(fire.hazards())
                    .containsExactly(FireGrading.grade(WornCloth.of(completed, Fit.LOOSE, Layer.SKIN), TENDING));
            assertThat(fire.rulesOut(0)).isEqualTo(fire.hazards().get(0).grade() == FireGrade.SEVERE);
        }
    }

    /** A film or wax counts as 20 % of the mass (see {@link WornCloth}); cotton and flax do not melt. */
    @Test
    void theMeltableShareCountsAFilm() {
        List<Cloth> cloths = cloths("waxed-cotton-250", "linen-plain-185", "polycotton-65-35-200");
        assertThat(cloths.stream().map(FireSideBySide::meltablePercent)).containsExactly(20.0, 0.0, 65.0);
        assertThat(FireSideBySide.meltablePercent(
                        cloths("coated-polyurethane-polyester-180").get(0)))
                .isCloseTo(100, within(1e-9));
    }
}
