package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import campcloth.comfort.Reading;
import campcloth.comfort.Reading.Value;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What must hold everywhere in the range of a model; cases are generated, a failure tells its seed and its case. */
class ModelPropertiesTest {

    private static final long SEED = 20_240_501L;
    private static final int MANY = 20_000;
    private static final int HOURS_OF_BODIES = 2_000;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void moreInsulationOrLessPermeableClothIsNeverColder() {
        for (int i = 0; i < MANY; i++) {
            Motion motion = Motion.conditioned(from(0, 18), from(0, 1.2), from(58, 400));
            double thin = from(0, 0.6);
            double thick = thin + from(0, 0.3);
            double tight = Math.exp(from(-1, 9));
            double open = tight * Math.exp(from(0, 4));
            double coldest = ResultantInsulation.m2KW(thin, motion, open);
            String which = told(i, motion, thin, thick, tight, open);
            assertThat(ResultantInsulation.m2KW(thick, motion, open)).as(which).isGreaterThanOrEqualTo(coldest - 1e-12);
            assertThat(ResultantInsulation.m2KW(thin, motion, tight)).as(which).isGreaterThanOrEqualTo(coldest - 1e-12);
        }
    }

    @Test
    void warmerAirNeverRequiresMoreInsulation() {
        for (int i = 0; i < MANY; i++) {
            double metabolic = from(58, 400);
            Motion motion = Motion.conditioned(from(0, 18), from(0, 1.2), metabolic);
            double airC = from(-40, 10);
            double warmerC = from(airC, 10);
            double sunK = from(0, 40);
            double humidity = from(0, 100);
            ColdCriterion criterion = ColdCriterion.values()[random.nextInt(2)];
            double cold = value(RequiredInsulation.clo(
                    new Air(airC, airC + sunK, motion.speedMs(), humidity), metabolic, motion, criterion));
            double warm = value(RequiredInsulation.clo(
                    new Air(warmerC, warmerC + sunK, motion.speedMs(), humidity), metabolic, motion, criterion));
            assertThat(warm)
                    .as(told(i, criterion, motion, metabolic, airC, warmerC, sunK, humidity))
                    .isLessThanOrEqualTo(cold + 1e-7);
        }
    }

    @Test
    void harderWorkNeverRequiresMoreInsulation() {
        for (int i = 0; i < MANY; i++) {
            double metabolic = from(58, 399);
            double harder = from(metabolic, 400);
            double speed = from(0, 18);
            double walking = from(0, 1.2);
            Air air = new Air(from(-40, 10), from(-40, 40), speed, from(0, 100));
            ColdCriterion criterion = ColdCriterion.values()[random.nextInt(2)];
            double easy = value(
                    RequiredInsulation.clo(air, metabolic, Motion.conditioned(speed, walking, metabolic), criterion));
            double hard =
                    value(RequiredInsulation.clo(air, harder, Motion.conditioned(speed, walking, harder), criterion));
            assertThat(hard)
                    .as(told(i, criterion, air, metabolic, harder, walking))
                    .isLessThanOrEqualTo(easy + 1e-7);
        }
    }

    @Test
    void moreInsulationNeverCoolsSooner() {
        for (int i = 0; i < MANY; i++) {
            double metabolic = from(58, 400);
            Motion motion = Motion.conditioned(from(0, 18), from(0, 1.2), metabolic);
            Air air = new Air(from(-40, 10), from(-40, 40), motion.speedMs(), from(0, 100));
            double thin = from(0, 0.5);
            double thick = thin + from(0, 0.3);
            double sooner = value(DurationLimit.hours(air, metabolic, motion, ColdCriterion.MINIMAL, thin));
            assertThat(value(DurationLimit.hours(air, metabolic, motion, ColdCriterion.MINIMAL, thick)))
                    .as(told(i, air, motion, metabolic, thin, thick))
                    .isGreaterThanOrEqualTo(sooner - 1e-6);
        }
    }

    @Test
    void theVoteRisesWithAirAndClothing() {
        int compared = 0;
        for (int i = 0; i < MANY; i++) {
            Air air = new Air(from(10, 29), from(10, 30), from(0, 1), from(0, 100));
            Air warmer = new Air(from(air.airC(), 30), air.radiantC(), air.speedMs(), air.humidityPercent());
            double met = from(0.8, 4);
            double clo = from(0, 2);
            double more = from(clo, 2);
            Optional<Value> vote = Pmv.vote(air, met, clo).inRange();
            Optional<Value> warm = Pmv.vote(warmer, met, clo).inRange();
            Optional<Value> dressed = Pmv.vote(air, met, more).inRange();
            String which = told(i, air, warmer, met, clo, more);
            if (vote.isPresent() && warm.isPresent()) {
                compared++;
                assertThat(warm.get().value())
                        .as(which)
                        .isGreaterThanOrEqualTo(vote.get().value() - 1e-9);
            }
            if (vote.isPresent() && dressed.isPresent()) {
                compared++;
                assertThat(dressed.get().value())
                        .as(which)
                        .isGreaterThanOrEqualTo(vote.get().value() - 1e-9);
            }
        }
        assertThat(compared).isGreaterThan(MANY / 10);
    }

    @Test
    void everyMinuteOfTheTwoNodeBodyBalances() {
        for (int i = 0; i < HOURS_OF_BODIES; i++) {
            Air air = mildAir();
            double met = from(0.8, 5);
            TwoNode model = new TwoNode(air, met, Worn.ordinary(from(0, 4)), random.nextBoolean());
            Body before = model.start();
            for (int minute = 1; minute <= 60; minute++) {
                Body after = model.minuteAfter(before);
                double stored = TwoNode.CAPACITY_WHM2K
                        * 60
                        * (before.skinShare() * (after.skinC() - before.skinC())
                                + (1 - before.skinShare()) * (after.coreC() - before.coreC()));
                double gained = before.metabolicWm2() - after.breathWm2() - after.dryWm2() - before.evaporationWm2();
                assertThat(stored).as(told(i, minute, air, met)).isCloseTo(gained, within(0.1));
                double throughClothing = model.surfaceLossWm2(after);
                assertThat(after.dryWm2()).as(told(i, minute, air, met)).isCloseTo(throughClothing, within(0.1));
                before = random.nextBoolean() ? after : after.evaporatingMore(from(0, 100));
            }
        }
    }

    @Test
    void aClothThatBreathesBetterNeverWetsTheSkin() {
        int compared = 0;
        for (int i = 0; i < MANY; i++) {
            Air air = mildAir();
            double met = from(0.8, 5);
            double insulation = from(0.01, 4) * Worn.M2KW_PER_CLO;
            double breathing = from(0.001, 0.06);
            double close = breathing + from(0, 0.05);
            TwoNode model = new TwoNode(air, met, new Worn(insulation, breathing), false);
            double better = model.after(60).wettedness();
            double worse = new TwoNode(air, met, new Worn(insulation, close), false)
                    .after(60)
                    .wettedness();
            boolean swings = better > model.wettest() - 0.05; // see TwoNode on a skin as wet as it can be
            compared += swings ? 0 : 1;
            assertThat(better)
                    .as(told(i, air, met, insulation, breathing, close))
                    .isLessThanOrEqualTo(worse + (swings ? 0.02 : 1e-3));
        }
        assertThat(compared).isGreaterThan(MANY / 4);
    }

    @Test
    void aboveTenDegreesWarmerAirOrHarderWorkNeverNeedsMore() {
        for (int i = 0; i < 2 * HOURS_OF_BODIES; i++) {
            double airC = from(10, 40);
            double warmerC = from(airC, 40);
            double sunK = from(0, 25);
            double humidity = from(20, 90);
            double speed = from(0.1, 3);
            double met = from(0.8, 3);
            double harder = from(met, 3);
            Air air = new Air(airC, airC + sunK, speed, humidity);
            Air warmer = new Air(warmerC, warmerC + sunK, speed, humidity);
            double need = orFour(SkinNeed.clo(air, met, false));
            String which = told(i, air, warmer, met, harder);
            assertThat(orFour(SkinNeed.clo(warmer, met, false))).as(which).isLessThanOrEqualTo(need + 2e-4);
            assertThat(orFour(SkinNeed.clo(air, harder, false))).as(which).isLessThanOrEqualTo(need + 2e-4);
        }
    }

    private Air mildAir() {
        double airC = from(0, 45);
        return new Air(airC, airC + from(-5, 25), from(0, 5), from(5, 100));
    }

    private static double orFour(Reading need) {
        return need.inRange().map(Value::value).orElse(4.0);
    }

    private double from(double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    private static double value(Reading reading) {
        return reading.inRange().orElseThrow().value();
    }

    private static String told(int number, Object... parts) {
        return "seed " + SEED + ", case " + number + ": " + java.util.Arrays.toString(parts);
    }
}
