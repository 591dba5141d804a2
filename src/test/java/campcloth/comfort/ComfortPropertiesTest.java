package campcloth.comfort;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.cloth.Cloth;
import campcloth.event.Activity;
import campcloth.event.Spell;
import campcloth.event.Sun;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold for any cloth in any weather; cases are generated, a failure tells its seed and its case. */
class ComfortPropertiesTest {

    private static final long SEED = 1_066L;
    private static final int CASES = 2_000;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void thickerOrLessPermeableClothIsNeverColder() {
        for (int i = 0; i < CASES; i++) {
            Spell spell = spell(from(-20, 40));
            Comfort comfort = Comfort.in(List.of(spell));
            double thickness = from(0.1, 4);
            double open = from(1, 2000);
            double thicker = thickness + from(0, 2);
            double tighter = open * from(0.01, 1);
            double least = clo(comfort, thickness, open);
            String which = told(i, spell, thickness, thicker, open, tighter);
            assertThat(clo(comfort, thicker, open)).as(which).isGreaterThanOrEqualTo(least - 1e-9);
            assertThat(clo(comfort, thickness, tighter)).as(which).isGreaterThanOrEqualTo(least - 1e-9);
        }
    }

    @Test
    void warmerAirNeverNeedsMoreClothingWhicheverModelTells() {
        int compared = 0;
        for (int i = 0; i < CASES; i++) {
            double airC = from(-10, 30);
            Spell cold = spell(airC);
            Spell warm = new Spell(
                    cold.name(),
                    cold.hours(),
                    from(airC, 40),
                    cold.humidityPercent(),
                    cold.windMs(),
                    cold.sun(),
                    cold.activity(),
                    cold.fire());
            Reading before = SpellNeeds.of(cold).neededClo();
            Reading after = SpellNeeds.of(warm).neededClo();
            if (before.inRange().isPresent() && after.inRange().isPresent()) {
                compared++;
                assertThat(value(after)).as(told(i, cold, warm)).isLessThanOrEqualTo(value(before) + 2e-4);
            }
        }
        assertThat(compared).isGreaterThan(CASES / 4);
    }

    @Test
    void clothThatBreathesBetterNeverWetsTheSkinAndLetsMoreVapourPass() {
        int compared = 0;
        for (int i = 0; i < CASES; i++) {
            Spell spell = spell(from(0, 45));
            Comfort comfort = Comfort.in(List.of(spell));
            double thickness = from(0.1, 4);
            double open = from(1, 2000);
            double breathing = from(1, 30);
            double close = breathing + from(0, 60);
            SpellComfort better = in(comfort, thickness, open, breathing);
            SpellComfort worse = in(comfort, thickness, open, close);
            String which = told(i, spell, thickness, open, breathing, close);
            assertThat(better.heat().vapourResistanceM2PaW().value())
                    .as(which)
                    .isLessThanOrEqualTo(worse.heat().vapourResistanceM2PaW().value() + 1e-9);
            if (better.heat().wettedness().inRange().isPresent()) {
                compared++;
                assertThat(value(better.heat().wettedness()))
                        .as(which)
                        .isLessThanOrEqualTo(value(worse.heat().wettedness()) + 0.005);
            }
        }
        assertThat(compared).isGreaterThan(CASES / 4);
    }

    /** Cloth and outfit are asked of each spell alone: what else an event holds changes nothing in it. */
    @Test
    void aSpellIsTheSameWhateverStandsBesideItInTheEvent() {
        for (int i = 0; i < 60; i++) {
            List<Spell> spells = List.of(spell(from(-10, 40)), spell(from(-10, 40)), spell(from(-10, 40)));
            Cloth cloth = Samples.cloth("case", from(0.2, 3), from(5, 1500), from(2, 30));
            List<SpellComfort> together = Comfort.in(spells).of(cloth, Samples.OUTER_TUNIC);
            for (int j = 0; j < spells.size(); j++) {
                assertThat(together.get(j))
                        .as(told(i, spells, j, cloth.figures()))
                        .isEqualTo(Comfort.in(List.of(spells.get(j)))
                                .of(cloth, Samples.OUTER_TUNIC)
                                .get(0));
            }
        }
    }

    private static SpellComfort in(Comfort comfort, double thickness, double permeability, double vapour) {
        return comfort.of(Samples.cloth("case", thickness, permeability, vapour), Samples.OUTER_TUNIC)
                .get(0);
    }

    private static double clo(Comfort comfort, double thickness, double permeability) {
        return value(in(comfort, thickness, permeability, 5).warmth().resultantClo());
    }

    private Spell spell(double airC) {
        Activity[] activities = Activity.values();
        return Samples.spell(
                airC,
                from(10, 100),
                from(0, 15),
                Sun.values()[random.nextInt(3)],
                activities[random.nextInt(activities.length)]);
    }

    private double from(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static double value(Reading reading) {
        return reading.inRange().orElseThrow().value();
    }

    private static String told(int number, Object... parts) {
        return "seed " + SEED + ", case " + number + ": " + Arrays.toString(parts);
    }
}
