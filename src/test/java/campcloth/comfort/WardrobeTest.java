package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Outfit;
import campcloth.cloth.OutfitPart;
import campcloth.cloth.OutfitPart.Kind;
import campcloth.cloth.Wear;
import campcloth.comfort.WornGarment.Standing;
import campcloth.comfort.model.Worn;
import campcloth.event.Activity;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WardrobeTest {

    private static final Cloth MELTON = Samples.cloth("melton", 2.0, 85, 12);
    private static final Cloth LINEN = Samples.cloth("linen", 0.4, 400, 2.5);
    private static final Spell NIGHT = Samples.spell(6, 85, 4, Sun.NONE, Activity.STANDING);

    @Test
    void whatIsToldTakesThePlaceOfWhatIsPresumedOfItsKind() {
        Wardrobe told = wardrobe(part(Kind.FOOTWEAR, 0));
        assertThat(told.clo(Kind.FOOTWEAR)).isZero();
        assertThat(told.clo()).isCloseTo(wardrobe().clo() - 0.16, within(1e-9));
        assertThat(told.garments())
                .filteredOn(garment -> garment.is(Kind.FOOTWEAR))
                .singleElement()
                .satisfies(garment -> {
                    assertThat(garment.standing()).isEqualTo(Standing.TOLD);
                    assertThat(garment.because()).isEqualTo("said not to be worn");
                });
        assertThat(wardrobe().garments()).allMatch(garment -> garment.standing() == Standing.PRESUMED);
        assertThat(wardrobe(part(Kind.SHIRT, 0.3), part(Kind.SHIRT, 0.2)).clo(Kind.SHIRT))
                .isCloseTo(0.5, within(1e-9));
    }

    /** 0.0043 * 65 + 0.0014 * 65 * 2.0 = 0.2795 + 0.182. */
    @Test
    void aToldClothIsReckonedOverTheBodyThatItsKindCovers() {
        assertThat(wardrobe(part(Kind.CLOAK, MELTON)).clo(Kind.CLOAK)).isCloseTo(0.4615, within(1e-9));
        assertThat(wardrobe(new OutfitPart(Kind.CLOAK, Optional.of(MELTON), Optional.of(0.7)))
                        .clo(Kind.CLOAK))
                .isEqualTo(0.7);
        assertThat(wardrobe(new OutfitPart(Kind.CLOAK, Optional.empty(), Optional.empty()))
                        .clo(Kind.CLOAK))
                .isEqualTo(0.46);
    }

    @Test
    void theListedValuesOfRegressionGarmentsAreWhatTheRegressionGives() {
        assertThat(GarmentRegression.clo(65, 0.5)).isCloseTo(0.33, within(0.006));
        assertThat(GarmentRegression.clo(15, 1.5)).isCloseTo(0.10, within(0.006));
        assertThat(GarmentRegression.clo(51, 0.8)).isCloseTo(0.28, within(0.006));
        assertThat(GarmentRegression.clo(65, 2)).isCloseTo(0.46, within(0.006));
        assertThat(GarmentRegression.clo(65, 5)).isEqualTo(GarmentRegression.clo(65, 3));
    }

    /** The tighter of cloak and what it lies over: 85 of melton over 400 of linen; covering 65 % it decides alone. */
    @Test
    void aCloakStopsTheWind() {
        assertThat(outermost(LINEN, Samples.OUTER_TUNIC)).isCloseTo(400, within(1e-6));
        assertThat(outermost(LINEN, Samples.OUTER_TUNIC, part(Kind.CLOAK, MELTON)))
                .isCloseTo(85, within(1e-6));
        assertThat(outermost(MELTON, Samples.OUTER_TUNIC, part(Kind.CLOAK, LINEN)))
                .isCloseTo(85, within(1e-6));
        assertThat(outermost(MELTON, Samples.OUTER_TUNIC, part(Kind.CLOAK, 0))).isCloseTo(85, within(1e-6));
    }

    /** A garment under a presumed overgarment is not what meets the wind; where that is said not to be worn, it is. */
    @Test
    void underAnOvergarmentTheOvergarmentMeetsTheWind() {
        Wear beneath = new Wear(false, Layer.MIDDLE, Fit.LOOSE, false, 65, 2);
        assertThat(outermost(LINEN, beneath)).isCloseTo(100, within(1e-6));
        assertThat(outermost(LINEN, beneath, part(Kind.OVERGARMENT, 0))).isCloseTo(400, within(1e-6));
        assertThat(outermost(LINEN, beneath, part(Kind.OVERGARMENT, MELTON))).isCloseTo(85, within(1e-6));
    }

    /** Thickness 0.4 + 2.0 mm; vapour by the formula: 0.65 (14.5 - 60 * 0.0024 / 0.04 / 0.38) / 1000 on top of I_cl / (16.5 * 0.38). */
    @Test
    void aLiningAddsThicknessAndVapourResistance() {
        Ensemble lined = ensemble(LINEN, Samples.OUTER_TUNIC, part(Kind.LINING, MELTON));
        Ensemble plain = ensemble(LINEN, Samples.OUTER_TUNIC);
        assertThat(lined.basicClo() - plain.basicClo()).isCloseTo(0.835 * 0.0014 * 65 * 2.0, within(1e-9));
        double basic = lined.basicClo() * Worn.M2KW_PER_CLO;
        assertThat(lined.vapourResistanceM2KpaW())
                .isCloseTo(basic / (16.5 * 0.38) + 0.65 * (14.5 - 60 * 0.0024 / 0.04 / 0.38) / 1000, within(1e-9));
        assertThat(lined.permeabilityMmS()).isCloseTo(400.0 * 85 / 485, within(1e-6));
    }

    @Test
    void trimAndThreadChangeNothing() {
        assertThat(ensemble(LINEN, Samples.OUTER_TUNIC, part(Kind.TRIM, MELTON), part(Kind.THREAD, MELTON)))
                .isEqualTo(ensemble(LINEN, Samples.OUTER_TUNIC));
    }

    private static OutfitPart part(Kind kind, double clo) {
        return new OutfitPart(kind, Optional.empty(), Optional.of(clo));
    }

    private static OutfitPart part(Kind kind, Cloth cloth) {
        return new OutfitPart(kind, Optional.of(cloth), Optional.empty());
    }

    private static Wardrobe wardrobe(OutfitPart... parts) {
        return comfort(parts).wardrobe(Samples.OUTER_TUNIC);
    }

    private static double outermost(Cloth cloth, Wear wear, OutfitPart... parts) {
        return ensemble(cloth, wear, parts).permeabilityMmS();
    }

    private static Ensemble ensemble(Cloth cloth, Wear wear, OutfitPart... parts) {
        return comfort(parts).ensemble(cloth, wear);
    }

    private static Comfort comfort(OutfitPart... parts) {
        return Comfort.in(List.of(NIGHT)).wearing(new Outfit(List.of(parts)));
    }
}
