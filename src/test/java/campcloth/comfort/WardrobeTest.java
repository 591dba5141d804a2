package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
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
import campcloth.figure.Refused;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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

    private static final Spell NOON = Samples.spell(27, 50, 1, Sun.FULL, Activity.WALKING);

    @Test
    void aCloakPutOnInTheEveningIsOffAtNoon() {
        Spell noon = named("noon", NOON);
        Spell evening = named("evening", NIGHT);
        OutfitPart cloak = new OutfitPart(Kind.CLOAK, Optional.of(MELTON), Optional.empty(), Set.of("evening"));
        Comfort event = Comfort.in(List.of(noon, evening)).wearing(new Outfit(List.of(cloak)));
        assertThat(event.wardrobe(Samples.OUTER_TUNIC, 0).clo(Kind.CLOAK)).isZero();
        assertThat(event.wardrobe(Samples.OUTER_TUNIC, 1).clo(Kind.CLOAK)).isCloseTo(0.4615, within(1e-9));
        Comfort always = Comfort.in(List.of(noon, evening)).wearing(new Outfit(List.of(part(Kind.CLOAK, MELTON))));
        Comfort never = Comfort.in(List.of(noon, evening));
        assertThat(event.of(LINEN, Samples.OUTER_TUNIC).get(0).heat())
                .isEqualTo(never.of(LINEN, Samples.OUTER_TUNIC).get(0).heat());
        assertThat(event.of(LINEN, Samples.OUTER_TUNIC).get(1))
                .isEqualTo(always.of(LINEN, Samples.OUTER_TUNIC).get(1));
        assertThat(event.dressings(Samples.OUTER_TUNIC))
                .extracting(Dressing::spells)
                .containsExactly(List.of("noon"), List.of("evening"));
    }

    /** What is told of a kind for one spell says that nothing of it is worn in the others, presumed or not. */
    @Test
    void warmUnderwearForTheNightAloneIsOffInTheMorning() {
        Spell morning = named("morning", Samples.spell(8, 85, 2, Sun.NONE, Activity.WALKING));
        OutfitPart warm = new OutfitPart(Kind.WARM_UNDERWEAR, Optional.empty(), Optional.empty(), Set.of("night"));
        Comfort event = Comfort.in(List.of(morning, named("night", NIGHT))).wearing(new Outfit(List.of(warm)));
        assertThat(event.wardrobe(Samples.OUTER_TUNIC, 0).clo(Kind.WARM_UNDERWEAR))
                .isZero();
        assertThat(event.wardrobe(Samples.OUTER_TUNIC, 1).clo(Kind.WARM_UNDERWEAR))
                .isCloseTo(0.35, within(1e-9));
    }

    @Test
    void spellsOfTheSameColdShareAWardrobe() {
        Comfort event = Comfort.in(List.of(named("a", NIGHT), named("b", NOON), named("c", NIGHT)));
        assertThat(event.dressings(Samples.OUTER_TUNIC))
                .extracting(Dressing::spells)
                .containsExactly(List.of("a", "c"), List.of("b"));
    }

    @Test
    void whatIsSewnInIsWornThroughAllSpells() {
        assertThatThrownBy(() -> new OutfitPart(Kind.LINING, Optional.empty(), Optional.empty(), Set.of("noon")))
                .isInstanceOf(Refused.class);
    }

    /** The evening's cloak does not sweat at noon, and what was sweated at noon is still there in the evening. */
    @Test
    void theCourseChangesLayersBetweenSpellsAndKeepsTheBody() {
        Spell noon = named("noon", NOON);
        Spell evening = named("evening", Samples.spell(12, 85, 2, Sun.NONE, Activity.STANDING));
        OutfitPart cloak = new OutfitPart(Kind.CLOAK, Optional.of(MELTON), Optional.empty(), Set.of("evening"));
        Comfort event = Comfort.in(List.of(noon, evening));
        Course bare = Courses.in(event).of(LINEN, Samples.OUTER_TUNIC);
        Course cloaked = Courses.in(event.wearing(new Outfit(List.of(cloak)))).of(LINEN, Samples.OUTER_TUNIC);
        int minutes = (int) (60 * noon.hours());
        assertThat(cloaked.moments().subList(0, minutes))
                .isEqualTo(bare.moments().subList(0, minutes));
        Moment.Felt last = cloaked.moments().get(minutes - 1).felt().orElseThrow();
        Moment.Felt next = cloaked.moments().get(minutes).felt().orElseThrow();
        assertThat(last.waterGM2()).isPositive();
        assertThat(next.waterGM2()).isCloseTo(last.waterGM2(), within(2.0));
        assertThat(next.coreHighC()).isCloseTo(last.coreHighC(), within(0.05));
        Moment.Felt endBare =
                bare.moments().get(bare.moments().size() - 1).felt().orElseThrow();
        Moment.Felt endCloaked =
                cloaked.moments().get(cloaked.moments().size() - 1).felt().orElseThrow();
        assertThat(endCloaked.skinC()).isGreaterThan(endBare.skinC() + 0.3);
    }

    @Test
    void trousersAndSkirtsAreNotWornOnABareTrunk() {
        // trousers cover 48 %, a skirt to the ground 49.8 %, a tabard to the knee 51 %
        assertThat(presumedTunics(48)).isEqualTo(1);
        assertThat(presumedTunics(49.8)).isEqualTo(1);
        assertThat(presumedTunics(51)).isEqualTo(0);
    }

    private static int presumedTunics(double coveredPercent) {
        Wear wear = new Wear(true, Layer.OUTER, Fit.LOOSE, false, coveredPercent, 1.5);
        return Wardrobe.with(wear, 20, Outfit.UNTOLD).worn(Kind.UNDER_TUNIC).size();
    }

    private static Spell named(String name, Spell spell) {
        return new Spell(
                name,
                spell.hours(),
                spell.airC(),
                spell.humidityPercent(),
                spell.windMs(),
                spell.sun(),
                spell.activity(),
                spell.fire());
    }

    private static OutfitPart part(Kind kind, double clo) {
        return new OutfitPart(kind, Optional.empty(), Optional.of(clo));
    }

    private static OutfitPart part(Kind kind, Cloth cloth) {
        return new OutfitPart(kind, Optional.of(cloth), Optional.empty());
    }

    private static Wardrobe wardrobe(OutfitPart... parts) {
        return comfort(parts).wardrobe(Samples.OUTER_TUNIC, 0);
    }

    private static double outermost(Cloth cloth, Wear wear, OutfitPart... parts) {
        return ensemble(cloth, wear, parts).permeabilityMmS();
    }

    private static Ensemble ensemble(Cloth cloth, Wear wear, OutfitPart... parts) {
        return comfort(parts).ensembles(cloth, wear).get(0);
    }

    private static Comfort comfort(OutfitPart... parts) {
        return Comfort.in(List.of(NIGHT)).wearing(new Outfit(List.of(parts)));
    }
}
