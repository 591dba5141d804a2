package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.cloth.Cloth;
import campcloth.comfort.Moment.Felt;
import campcloth.event.Activity;
import campcloth.event.Place;
import campcloth.event.Sky;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold for the course of any event; cases are generated, a failure tells its seed and its case. */
class CoursePropertiesTest {

    private static final long SEED = 1_415L;
    private static final int CASES = 150;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void aSpellSplitIntoTwoEqualHalvesChangesNothing() {
        for (int i = 0; i < CASES; i++) {
            List<Spell> whole = spells(from(2, 32));
            List<Spell> split = new ArrayList<>();
            for (Spell spell : whole) {
                split.add(part(spell, spell.hours() / 2, 0));
                split.add(part(spell, spell.hours() / 2, spell.hours() / 2));
            }
            Cloth cloth = cloth();
            Course one = course(whole, cloth);
            Course two = course(split, cloth);
            assertThat(two.moments()).hasSameSizeAs(one.moments());
            String which = "seed " + SEED + ", case " + i + ": " + whole;
            for (int minute = 0; minute < one.moments().size(); minute++) {
                Optional<Felt> before = one.moments().get(minute).felt();
                Optional<Felt> after = two.moments().get(minute).felt();
                assertThat(after.isPresent()).as(which).isEqualTo(before.isPresent());
                if (before.isPresent() && after.isPresent()) {
                    assertThat(after.get().skinC())
                            .as(which)
                            .isCloseTo(before.get().skinC(), within(0.02));
                    assertThat(after.get().wettedness())
                            .as(which)
                            .isCloseTo(before.get().wettedness(), within(0.01));
                    assertThat(after.get().waterGM2())
                            .as(which)
                            .isCloseTo(before.get().waterGM2(), within(0.5));
                }
            }
        }
    }

    @Test
    void warmerAirIsNeverColderToTheSkin() {
        int compared = 0;
        for (int i = 0; i < CASES; i++) {
            Spell cold = spell(from(1, 30));
            double warmer = from(0.5, 10);
            Spell warm = new Spell(
                    cold.name(),
                    cold.hours(),
                    cold.airC() + warmer,
                    cold.humidityPercent(),
                    cold.windMs(),
                    cold.sun(),
                    cold.activity(),
                    cold.fire());
            List<Ensemble> clothing = Comfort.in(List.of(cold)).ensembles(cloth(), Samples.OUTER_TUNIC);
            Course before = Courses.in(Comfort.in(List.of(cold))).in(clothing);
            Course after = Courses.in(Comfort.in(List.of(warm))).in(clothing);
            String which = "seed " + SEED + ", case " + i + ": " + cold + " and " + warmer + " K more";
            if (before.meanSkinC().isPresent() && after.meanSkinC().isPresent()) {
                compared++;
                assertThat(after.meanSkinC().getAsDouble())
                        .as(which)
                        .isGreaterThanOrEqualTo(before.meanSkinC().getAsDouble() - 0.02);
                assertThat(after.hoursTooCold()).as(which).isLessThanOrEqualTo(before.hoursTooCold() + 0.02);
            }
        }
        assertThat(compared).isGreaterThan(CASES / 3);
    }

    @Test
    void everyHourIsCountedAndWhatTheClothingHoldsStaysInBounds() {
        for (int i = 0; i < CASES; i++) {
            List<Spell> spells = spells(from(-20, 42));
            Course course = course(spells, cloth());
            String which = "seed " + SEED + ", case " + i + ": " + spells;
            assertThat(course.hoursInComfort()
                            + course.hoursTooCold()
                            + course.hoursTooWarm()
                            + course.hoursNotComputed())
                    .as(which)
                    .isGreaterThanOrEqualTo(course.hours() - 1e-9);
            for (Moment moment : course.moments()) {
                moment.felt().ifPresent(felt -> {
                    assertThat(felt.waterGM2()).as(which).isBetween(0.0, 300.0);
                    assertThat(felt.wettedness()).as(which).isBetween(0.0, 1.0);
                    assertThat(felt.skinC()).as(which).isBetween(5.0, 45.0);
                });
            }
        }
    }

    private static Course course(List<Spell> spells, Cloth cloth) {
        return Courses.in(Comfort.in(spells, Optional.of(new Place(51, 196)))).of(cloth, Samples.OUTER_TUNIC);
    }

    private List<Spell> spells(double airC) {
        List<Spell> spells = new ArrayList<>();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            spells.add(spell(airC + from(-3, 3)));
        }
        return spells;
    }

    private Spell spell(double airC) {
        Activity[] activities = Activity.values();
        Optional<Double> cloud = random.nextBoolean() ? Optional.of(from(0, 100)) : Optional.empty();
        return new Spell(
                        "Wendlow",
                        random.nextInt(1, 6),
                        airC,
                        from(20, 95),
                        from(0, 6),
                        Sun.NONE,
                        activities[random.nextInt(activities.length)],
                        Optional.empty())
                .withSky(new Sky(Optional.of(LocalTime.of(random.nextInt(24), 0)), cloud, Optional.empty()));
    }

    private static Spell part(Spell spell, double hours, double later) {
        Sky sky = spell.skyTold();
        return new Spell(
                        spell.name(),
                        hours,
                        spell.airC(),
                        spell.humidityPercent(),
                        spell.windMs(),
                        spell.sun(),
                        spell.activity(),
                        spell.fire())
                .withSky(new Sky(
                        sky.startsAt().map(t -> t.plusSeconds((long) (later * 3600))),
                        sky.cloudPercent(),
                        sky.shelter()));
    }

    private Cloth cloth() {
        return Samples.cloth("case", from(0.2, 3), from(5, 1000), from(2, 20));
    }

    private double from(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
