package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.cloth.Outfit;
import campcloth.cloth.Wear;
import campcloth.comfort.Reading.Value;
import campcloth.event.Activity;
import campcloth.event.FireKind;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ComfortTest {

    private static final Spell WINDY_WATCH = Samples.spell(2, 80, 6, Sun.NONE, Activity.STANDING);
    private static final Spell SUMMER_NOON = Samples.spell(27, 50, 1.5, Sun.FULL, Activity.WALKING);
    private static final Cloth FULLED_WOOL = Samples.cloth("fulled wool", 1.8, 50, 9);
    private static final Cloth OPEN_WOOL = Samples.cloth("open wool", 1.2, 800, 6);
    private static final Cloth LINEN = Samples.cloth("linen", 0.37, 400, 2.5);
    private static final Cloth SATIN = Samples.cloth("polyester satin", 0.30, 40, 4.5);

    @Test
    void windtightFulledWoolKeepsMoreWarmthInWindThanOpenWool() {
        SpellComfort fulled = in(WINDY_WATCH, FULLED_WOOL, Samples.OUTER_TUNIC);
        SpellComfort open = in(WINDY_WATCH, OPEN_WOOL, Samples.OUTER_TUNIC);
        assertThat(value(fulled.warmth().resultantClo()) - value(open.warmth().resultantClo()))
                .isGreaterThan(0.1);
        assertThat(value(fulled.warmth().marginClo()))
                .isGreaterThan(value(open.warmth().marginClo()));
        assertThat(value(fulled.warmth().hoursUntilCooling()))
                .isGreaterThan(value(open.warmth().hoursUntilCooling()));
    }

    @Test
    void permeabilityAloneDecidesInWind() {
        Cloth tight = Samples.cloth("tight", 1.2, 20, 6);
        Cloth open = Samples.cloth("open", 1.2, 800, 6);
        assertThat(value(in(WINDY_WATCH, tight, Samples.OUTER_TUNIC).warmth().resultantClo()))
                .isGreaterThan(value(in(WINDY_WATCH, open, Samples.OUTER_TUNIC)
                                .warmth()
                                .resultantClo())
                        + 0.1);
    }

    @Test
    void linenLeavesTheSkinDrierAtNoonThanPolyesterSatin() {
        SpellComfort linen = in(SUMMER_NOON, LINEN, Samples.OUTER_TUNIC);
        SpellComfort satin = in(SUMMER_NOON, SATIN, Samples.OUTER_TUNIC);
        assertThat(value(linen.heat().wettedness()))
                .isLessThan(value(satin.heat().wettedness()));
    }

    /** Under another garment the skin is as wet as it can be in both; what the sweating asks for still tells them apart. */
    @Test
    void linenBreathesBetterThanPolyesterSatinHoweverWorn() {
        for (Wear wear : List.of(Samples.OUTER_TUNIC, Samples.SHIRT)) {
            SpellComfort linen = in(SUMMER_NOON, LINEN, wear);
            SpellComfort satin = in(SUMMER_NOON, SATIN, wear);
            assertThat(value(linen.heat().wettednessAsked()))
                    .as("%s", wear)
                    .isLessThan(value(satin.heat().wettednessAsked()) - 0.02);
            assertThat(linen.heat().vapourResistanceM2PaW().value())
                    .as("%s", wear)
                    .isLessThan(satin.heat().vapourResistanceM2PaW().value());
        }
    }

    @Test
    void intervalsOfTheClothWidenTheReadings() {
        Cloth vague = Samples.cloth(
                "vague", Samples.between(1.0, 1.2, 1.5), Samples.between(200, 400, 900), Samples.between(4, 6, 9));
        Cloth sharp = Samples.cloth("sharp", 1.2, 400, 6);
        Spell watch = Samples.spell(2, 80, 4, Sun.NONE, Activity.STANDING);
        SpellComfort wide = in(watch, vague, Samples.OUTER_TUNIC);
        SpellComfort narrow = in(watch, sharp, Samples.OUTER_TUNIC);
        Value margin = wide.warmth().marginClo().inRange().orElseThrow();
        assertThat(margin.low()).isLessThan(margin.value());
        assertThat(margin.high()).isGreaterThan(margin.value());
        assertThat(margin.value()).isEqualTo(value(narrow.warmth().marginClo()));
        Value wet = wide.heat().wettedness().inRange().orElseThrow();
        assertThat(wet.high()).isGreaterThanOrEqualTo(wet.value());
    }

    @Test
    void fullSunOnAWalkRaisesRadiationByFifteenToTwentyFiveKelvin() {
        Surroundings around = Surroundings.of(SUMMER_NOON);
        assertThat(around.radiantC() - around.airC()).isBetween(15.0, 25.0);
        assertThat(Surroundings.of(WINDY_WATCH).radiantC()).isEqualTo(2);
    }

    @Test
    void windAtBodyHeightIsAboutHalfOfTheForecast() {
        assertThat(Surroundings.of(WINDY_WATCH).windMs()).isCloseTo(6 * 0.5207, within(0.001));
        assertThat(Surroundings.of(SUMMER_NOON).relativeMs()).isCloseTo(1.19, within(0.005));
    }

    @Test
    void aSeatAtTheFireNeedsLessClothing() {
        Spell away = Samples.spell(4, 80, 2, Sun.NONE, Activity.SEATED);
        Spell near = new Spell(
                "fire",
                3,
                4,
                80,
                2,
                Sun.NONE,
                Activity.SEATED,
                Optional.of(new OpenFire(FireRole.SEATED, Optional.of(2.0), Optional.empty())));
        assertThat(value(SpellNeeds.of(near).neededClo()))
                .isLessThan(value(SpellNeeds.of(away).neededClo()) - 0.1);
    }

    @Test
    void theKindOfAFireWarmsByItsHeat() {
        assertThat(radiantC(FireKind.COOKING_FIRE)).isLessThan(radiantC(FireKind.CAMPFIRE) - 1);
    }

    private static double radiantC(FireKind kind) {
        OpenFire fire = new OpenFire(FireRole.SEATED, Optional.of(2.0), Optional.empty(), Optional.of(kind));
        Spell spell = new Spell("fire", 3, 4, 80, 2, Sun.NONE, Activity.SEATED, Optional.of(fire));
        return Surroundings.of(spell).radiantC();
    }

    @Test
    void whereAModelDoesNotHoldItSaysSo() {
        SpellComfort frost = in(Samples.spell(-5, 80, 3, Sun.NONE, Activity.WALKING), LINEN, Samples.OUTER_TUNIC);
        assertThat(frost.heat().wettedness().outOfRange()).isPresent();
        assertThat(frost.vote().outOfRange()).isPresent();
        assertThat(frost.warmth().marginClo().inRange()).isPresent();
        SpellComfort noon = in(SUMMER_NOON, LINEN, Samples.OUTER_TUNIC);
        assertThat(noon.warmth().hoursUntilCooling().outOfRange()).isPresent();
        assertThat(noon.warmth().minimalMarginClo().outOfRange()).isPresent();
        SpellComfort sleep = in(Samples.spell(5, 80, 1, Sun.NONE, Activity.SLEEPING), LINEN, Samples.OUTER_TUNIC);
        assertThat(sleep.warmth().marginClo().outOfRange())
                .hasValueSatisfying(o -> assertThat(o.because()).startsWith("metabolic rate"));
        SpellComfort gale = in(Samples.spell(5, 80, 38, Sun.NONE, Activity.STANDING), LINEN, Samples.OUTER_TUNIC);
        assertThat(gale.warmth().resultantClo().outOfRange()).isPresent();
    }

    @Test
    void theWardrobeOfASpellFollowsItsOwnCold() {
        Comfort event = Comfort.in(List.of(SUMMER_NOON, WINDY_WATCH));
        assertThat(event.wardrobe(Samples.OUTER_TUNIC, 0))
                .isEqualTo(Wardrobe.with(Samples.OUTER_TUNIC, SUMMER_NOON.airC(), Outfit.UNTOLD));
        assertThat(event.wardrobe(Samples.OUTER_TUNIC, 1))
                .isEqualTo(Wardrobe.with(Samples.OUTER_TUNIC, 2, Outfit.UNTOLD));
        assertThat(event.dressings(Samples.OUTER_TUNIC)).hasSize(2);
        assertThat(Wardrobe.with(Samples.OUTER_TUNIC, 2, Outfit.UNTOLD).clo())
                .isGreaterThan(
                        Wardrobe.with(Samples.OUTER_TUNIC, 20, Outfit.UNTOLD).clo() + 0.35);
        assertThat(event.of(LINEN, Samples.OUTER_TUNIC)).hasSize(2);
    }

    @Test
    void cautionsFollowTheWeather() {
        assertThat(cautions(Samples.spell(18, 60, 2, Sun.PART, Activity.STANDING)))
                .isEmpty();
        assertThat(cautions(SUMMER_NOON, Samples.spell(30, 60, 1, Sun.FULL, Activity.SEATED)))
                .anyMatch(c -> c.startsWith("Heat"));
        assertThat(cautions(WINDY_WATCH)).anyMatch(c -> c.startsWith("Cold"));
        assertThat(cautions(Samples.spell(-25, 60, 10, Sun.NONE, Activity.STANDING)))
                .anyMatch(c -> c.contains("can freeze"));
    }

    private static SpellComfort in(Spell spell, Cloth cloth, Wear wear) {
        return Comfort.in(List.of(spell)).of(cloth, wear).get(0);
    }

    private static double value(Reading reading) {
        return reading.inRange().orElseThrow().value();
    }

    private static List<String> cautions(Spell... spells) {
        return ComfortCautions.of(List.of(spells), Optional.empty());
    }
}
