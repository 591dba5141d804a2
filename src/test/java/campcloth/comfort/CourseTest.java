package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.comfort.Moment.Felt;
import campcloth.event.Activity;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.Place;
import campcloth.event.Shelter;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import campcloth.event.Wetness;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CourseTest {

    private static final Cloth WOOL = Samples.cloth("wool", 1.5, 150, 8);
    private static final Spell MARCH = spell("march", 2, 20, Activity.WORKING);
    private static final Spell WATCH = spell("watch", 2, 8, Activity.STANDING);

    @Test
    void whoComesSweatingFromTheMarchIsColderOnTheWatchThanWhoComesRested() {
        Course after = course(MARCH, WATCH);
        Course alone = course(WATCH);
        double soaked = felt(after, 120).waterGM2();
        assertThat(soaked).isGreaterThan(10);
        double coldest = Double.POSITIVE_INFINITY;
        for (int minute = 30; minute <= 120; minute++) {
            coldest = Math.min(
                    coldest,
                    felt(after, 120 + minute).skinC() - felt(alone, minute).skinC());
        }
        assertThat(coldest).isLessThan(-0.1);
        assertThat(felt(after, 240).waterGM2()).isLessThan(soaked / 2);
    }

    @Test
    void wetClothesAreColderAllThroughTheCourse() {
        Course dry = course(WATCH);
        Course damp = course(WATCH.withWet(Wetness.DAMP));
        Course wet = course(WATCH.withWet(Wetness.WET));
        for (int minute = 1; minute <= 120; minute++) {
            assertThat(felt(damp, minute).skinC()).isLessThan(felt(dry, minute).skinC());
            assertThat(felt(wet, minute).skinC()).isLessThan(felt(damp, minute).skinC());
        }
        SpellComfort hour = Comfort.in(List.of(WATCH.withWet(Wetness.WET)))
                .of(WOOL, Samples.OUTER_TUNIC)
                .get(0);
        assertThat(value(wet.moments().get(0).dressed().givenClo()))
                .isCloseTo(value(hour.warmth().resultantClo()), within(0.001)); // the hour comes from a lattice
        assertThat(course(WATCH.withWet(Wetness.DRY)).moments().get(99).felt())
                .isEqualTo(dry.moments().get(99).felt());
    }

    @Test
    void theOrderOfTheSpellsMatters() {
        Course sweatThenCold = course(MARCH, WATCH);
        Course coldThenSweat = course(WATCH, MARCH);
        assertThat(sweatThenCold.meanSkinC().orElseThrow())
                .isNotCloseTo(coldThenSweat.meanSkinC().orElseThrow(), within(0.02));
        assertThat(sweatThenCold.coldest().orElseThrow().beyond())
                .isGreaterThan(coldThenSweat.coldest().orElseThrow().beyond());
    }

    @Test
    void aSingleSpellAgreesWithTheBodyAfterAnHourAndWithTheInsulation() {
        Spell noon = new Spell("noon", 3, 24, 50, 1.5, Sun.FULL, Activity.WALKING, Optional.empty());
        for (Spell spell : List.of(noon, MARCH, WATCH)) {
            SpellComfort hour =
                    Comfort.in(List.of(spell)).of(WOOL, Samples.OUTER_TUNIC).get(0);
            Course course = course(spell);
            Felt felt = felt(course, 60);
            assertThat(felt.wettedness()).isCloseTo(value(hour.heat().wettedness()), within(0.03));
            assertThat(felt.coreHighC()).isCloseTo(value(hour.heat().coreC()), within(0.05));
            assertThat(value(course.moments().get(0).dressed().givenClo()))
                    .isEqualTo(value(hour.warmth().resultantClo()));
            assertThat(value(course.moments().get(0).dressed().marginClo()))
                    .isEqualTo(value(hour.warmth().marginClo()));
        }
    }

    @Test
    void sleepIsNotFollowedAndTheWearerStartsAgainRestedAndDry() {
        Spell night = spell("night", 8, 9, Activity.SLEEPING);
        Course course = course(MARCH, night, WATCH);
        assertThat(course.hoursNotComputed()).isEqualTo(8);
        assertThat(course.spells().get(1).notComputed())
                .hasValueSatisfying(why -> assertThat(why).contains("bedding"));
        assertThat(felt(course, 620)).isEqualTo(felt(course(WATCH), 20));
    }

    @Test
    void inFrostInsulationAloneIsJudgedAndTooLittleOfItIsCarriedOn() {
        Spell frost = spell("frost", 3, -12, Activity.STANDING);
        Course course = course(frost, WATCH);
        assertThat(course.hoursByInsulationAlone()).isEqualTo(3);
        assertThat(course.moments().get(10).tooCold()).isTrue();
        assertThat(course.coldest().orElseThrow().measure()).isEqualTo(QuarterHour.Measure.INSULATION);
        assertThat(felt(course, 190).skinC()).isLessThan(felt(course(WATCH), 10).skinC());
    }

    @Test
    void aSeatAtTheFireIsWarmerThanOneWithoutAllThroughTheCourse() {
        Spell dark = spell("dark", 3, 8, Activity.SEATED);
        Spell fireside = new Spell(
                "fireside",
                3,
                8,
                70,
                2,
                Sun.NONE,
                Activity.SEATED,
                Optional.of(new OpenFire(FireRole.SEATED, Optional.of(2.0), Optional.empty())));
        Course without = course(dark);
        Course with = course(fireside);
        assertThat(felt(with, 180).skinC()).isGreaterThan(felt(without, 180).skinC() + 0.5);
    }

    @Test
    void aClearNightIsColderThanATentAndBothAreToldApartFromSilence() {
        Spell silent = spell("watch", 2, 8, Activity.SEATED);
        Surroundings clear =
                Surroundings.of(under(silent, new Sky(Optional.empty(), Optional.of(0.0), Optional.empty())));
        Surroundings tent = Surroundings.of(
                under(silent, new Sky(Optional.empty(), Optional.of(0.0), Optional.of(Shelter.TREES_OR_TENT))));
        assertThat(clear.radiantC()).isBetween(-4.0, 0.0);
        assertThat(tent).isEqualTo(Surroundings.of(silent));
        assertThat(Surroundings.presumed(List.of(silent), Optional.empty()))
                .anyMatch(s -> s.contains("warm as the air"));
    }

    @Test
    void theSunFollowsPlaceAndHour() {
        Spell day = new Spell("day", 10, 20, 50, 1, Sun.FULL, Activity.STANDING, Optional.empty());
        Spell told = under(day, new Sky(Optional.of(LocalTime.of(7, 0)), Optional.of(0.0), Optional.empty()));
        Optional<Place> summer = Optional.of(new Place(50, 196));
        Optional<Place> winter = Optional.of(new Place(50, 15));
        assertThat(Surroundings.of(told, summer).radiantC())
                .isGreaterThan(Surroundings.of(told, winter).radiantC() + 5);
        Spell cloudy = under(day, new Sky(Optional.of(LocalTime.of(7, 0)), Optional.of(100.0), Optional.empty()));
        assertThat(Surroundings.of(cloudy, summer).radiantC())
                .isLessThan(Surroundings.of(told, summer).radiantC() - 5);
        Spell midnight = under(day, new Sky(Optional.of(LocalTime.of(21, 0)), Optional.of(100.0), Optional.empty()));
        assertThat(Surroundings.between(midnight, summer, 0, 4).radiantC()).isLessThanOrEqualTo(20);
    }

    @Test
    void whatIsPresumedOfTheSunIsToldOfEachSpellThatItIsPresumedFor() {
        Optional<Place> place = Optional.of(new Place(50, 172));
        Spell untold = new Spell("market", 2, 20, 50, 1.5, Sun.PART, Activity.STANDING, Optional.empty());
        Spell told = untold.withSky(new Sky(Optional.of(LocalTime.NOON), Optional.of(20.0), Optional.empty()));
        assertThat(Surroundings.presumed(List.of(told), place))
                .singleElement()
                .asString()
                .startsWith("The sun stands as on");
        assertThat(Surroundings.presumed(List.of(untold, told), place))
                .anyMatch(s -> s.startsWith("The sun stands as on"))
                .anyMatch(s -> s.startsWith("Sun of middling strength"));
    }

    @Test
    void nobodyGoesOnBeyondBearing() {
        Spell furnace = new Spell("furnace", 12, 44, 60, 0.5, Sun.FULL, Activity.FIGHTING, Optional.empty());
        Course course = course(furnace);
        assertThat(course.beyondBearing()).isTrue();
        assertThat(course.hoursTooWarm()).isGreaterThan(11);
        assertThat(felt(course, 720).coreHighC()).isLessThan(39.5);
    }

    @Test
    void whoStopsInTimeCoolsDownAgain() {
        Spell furnace = new Spell("furnace", 4, 44, 60, 0.5, Sun.FULL, Activity.FIGHTING, Optional.empty());
        Course course = course(furnace, spell("shade", 3, 18, Activity.SEATED));
        assertThat(felt(course, 240).coreHighC()).isGreaterThan(38.5);
        assertThat(felt(course, 420).coreHighC()).isLessThan(37.5);
    }

    @Test
    void wetClothingAloneIsNoHeat() {
        Course course = course(spell("hard work", 3, 24, Activity.FIGHTING), spell("watch", 2, 4, Activity.STANDING));
        Felt soon = felt(course, 240);
        assertThat(soon.wetness()).isGreaterThan(soon.wettedness() + 0.05);
        assertThat(course.moments().get(299).tooWarm()).isFalse();
    }

    @Test
    void aDayOfSixtyHoursHasItsMinutes() {
        Course course = course(spell("long", 60, 15, Activity.STANDING), spell("short", 0.1, 15, Activity.STANDING));
        assertThat(course.moments()).hasSize(3606);
        assertThat(course.hoursTooCold() + course.hoursTooWarm() + course.hoursInComfort())
                .isCloseTo(60.1, within(1e-9));
    }

    static Spell spell(String name, double hours, double airC, Activity activity) {
        return new Spell(name, hours, airC, 70, 2, Sun.NONE, activity, Optional.empty());
    }

    private static Spell under(Spell spell, Sky sky) {
        return spell.withSky(sky);
    }

    static Course course(Spell... spells) {
        return Courses.in(Comfort.in(List.of(spells))).of(WOOL, Samples.OUTER_TUNIC);
    }

    private static Felt felt(Course course, int minute) {
        return course.moments().get(minute - 1).felt().orElseThrow();
    }

    private static double value(Reading reading) {
        return reading.inRange().orElseThrow().value();
    }
}
