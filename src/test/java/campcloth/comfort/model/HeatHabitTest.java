package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import campcloth.figure.ReferenceTable.Row;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A body used to heat against the published one; cases are generated, a failure tells its seed and its case. */
class HeatHabitTest {

    private static final long SEED = 1_348L;
    private static final int CASES = 400;
    private static final HeatHabit WHOLLY = new HeatHabit(1);

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void whoIsNotUsedToHeatIsThePublishedBody() {
        for (Row row : CheckRows.of("agreement/two-node.csv")) {
            Air air = new Air(
                    row.number("airC"), row.number("radiantC"), row.number("speedMs"), row.number("humidityPercent"));
            Worn worn = Worn.ordinary(row.number("clo"));
            assertThat(new TwoNode(air, row.number("met"), worn, false, HeatHabit.NONE).after(60))
                    .as("line %d", row.line())
                    .isEqualTo(new TwoNode(air, row.number("met"), worn, false).after(60));
        }
    }

    @Test
    void theMoreUsedToHeatTheCoolerTheCoreAndTheMoreCanEvaporate() {
        int sweating = 0;
        for (int i = 0; i < CASES; i++) {
            Air air = new Air(from(20, 42), from(20, 55), from(0.2, 3), from(15, 90));
            double met = from(1, 5);
            Worn worn = Worn.ordinary(from(0.2, 1.5));
            double more = from(0.05, 1);
            double less = more * random.nextDouble();
            TwoNode little = new TwoNode(air, met, worn, false, new HeatHabit(less));
            TwoNode much = new TwoNode(air, met, worn, false, new HeatHabit(more));
            Body one = little.after(60);
            Body other = much.after(60);
            String which =
                    "seed " + SEED + ", case " + i + ": " + air + ", " + met + ", " + worn + ", " + less + ", " + more;
            sweating += one.sweatCallGM2H() > 0 ? 1 : 0;
            assertThat(other.coreC()).as(which).isLessThanOrEqualTo(one.coreC() + 1e-9);
            assertThat(much.wettest()).as(which).isBetween(little.wettest(), 1.0);
        }
        assertThat(sweating).isGreaterThan(CASES / 2);
    }

    @Test
    void aBodyUsedToHeatBearsWhatDripsOffAnother() {
        Air noon = new Air(36, 50, 0.8, 55);
        TwoNode unused = new TwoNode(noon, 4, Worn.ordinary(0.8), false);
        TwoNode used = new TwoNode(noon, 4, Worn.ordinary(0.8), false, WHOLLY);
        assertThat(unused.after(60).wettednessAsked()).isGreaterThan(unused.wettest());
        assertThat(used.after(60).evaporationWm2())
                .isGreaterThan(unused.after(60).evaporationWm2() + 5);
        assertThat(used.after(60).coreC()).isLessThan(unused.after(60).coreC() - 0.3);
    }

    /** The ratio of ISO 7933, and its quarter. */
    @Test
    void limitsAreThoseOfTheStandard() {
        assertThat(WHOLLY.wettest(0.85)).isCloseTo(1, within(1e-12));
        assertThat(WHOLLY.mostSweat(400)).isCloseTo(500, within(1e-9));
        assertThat(WHOLLY.wettest(0.9)).isEqualTo(1);
    }

    @Test
    void everyMinuteBalances() {
        for (int i = 0; i < 40; i++) {
            Air air = new Air(from(0, 45), from(0, 60), from(0.1, 5), from(10, 100));
            HeatHabit habit = new HeatHabit(random.nextDouble());
            TwoNode model = new TwoNode(air, from(0.8, 5), Worn.ordinary(from(0, 4)), random.nextBoolean(), habit);
            Body before = model.start();
            for (int minute = 1; minute <= 60; minute++) {
                Body after = model.minuteAfter(before);
                double stored = TwoNode.CAPACITY_WHM2K
                        * 60
                        * (before.skinShare() * (after.skinC() - before.skinC())
                                + (1 - before.skinShare()) * (after.coreC() - before.coreC()));
                double gained = before.metabolicWm2() - after.breathWm2() - after.dryWm2() - before.evaporationWm2();
                assertThat(stored)
                        .as("seed %d, case %d, minute %d: %s, %s", SEED, i, minute, air, habit)
                        .isCloseTo(gained, within(0.1));
                before = after;
            }
        }
    }

    @Test
    void aShareIsAShare() {
        assertThatThrownBy(() -> new HeatHabit(1.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new HeatHabit(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    private double from(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }
}
