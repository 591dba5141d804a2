package campcloth.comfort.model;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.comfort.Reading;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Orders that hold everywhere in heat, wind and cloth; cases are generated, a failure tells its seed and its case. */
class HeatPropertiesTest {

    private static final long SEED = 20_260_704L;
    private static final int MANY = 20_000;

    /** Where the simple formula gives way to the regression in dry air, the Weather Service's own rules step down so far. */
    private static final double SEAM_F = 1.45;

    private static final double DRY_PERCENT = 20;

    private final SplittableRandom random = new SplittableRandom(SEED);

    @Test
    void hotterOrMoreHumidAirNeverHasALowerHeatIndex() {
        int seams = 0;
        for (int i = 0; i < MANY; i++) {
            double t = from(68, 122);
            double r = from(0, 100);
            double hotter = random.nextBoolean() ? from(t, 122) : t;
            double damper = random.nextBoolean() ? from(r, 100) : r;
            boolean seam = simple(t, r) && !simple(hotter, damper) && r < DRY_PERCENT;
            seams += seam ? 1 : 0;
            assertThat(HeatIndex.fahrenheit(hotter, damper))
                    .as(told(i, t, r, hotter, damper))
                    .isGreaterThanOrEqualTo(HeatIndex.fahrenheit(t, r) - (seam ? SEAM_F : 1e-9));
        }
        assertThat(seams).isLessThan(MANY / 10);
    }

    private static boolean simple(double t, double r) {
        return HeatIndex.fahrenheit(t, r) != HeatIndex.regression(t, r) + HeatIndex.adjustment(t, r);
    }

    @Test
    void hotterOrMoreHumidAirNeverHasALowerWbgtAndNeitherHasMoreSun() {
        for (int i = 0; i < MANY; i++) {
            double airC = from(10, 50);
            double hotterC = random.nextBoolean() ? from(airC, 50) : airC;
            double humidity = from(0, 100);
            double damper = random.nextBoolean() ? from(humidity, 100) : humidity;
            double speed = from(0, 20);
            double sunK = from(0, 30);
            boolean inSun = random.nextBoolean();
            double global = inSun ? from(1, 1100) : 0;
            Sunlight sun = new Sunlight(global, from(0, 0.9), from(5, 90));
            Sunlight more = new Sunlight(inSun ? from(global, 1100) : 0, sun.directShare(), sun.altitudeDegrees());
            double less = value(Wbgt.temperatureC(new Air(airC, airC + sunK, speed, humidity), sun));
            assertThat(value(Wbgt.temperatureC(new Air(hotterC, hotterC + sunK, speed, damper), more)))
                    .as(told(i, airC, hotterC, humidity, damper, speed, sunK, sun, more))
                    .isGreaterThanOrEqualTo(less - 1e-4);
        }
    }

    @Test
    void moreWindNeverWarmsByTheStandardOnCold() {
        for (int i = 0; i < MANY; i++) {
            double metabolic = from(58, 400);
            double walking = from(0, 1.2);
            double calm = from(0, 18);
            double windy = from(calm, 18);
            double airC = from(-40, 10);
            double radiantC = airC + from(0, 30);
            double humidity = from(0, 100);
            double p = Math.exp(from(0, 6.9));
            double basic = from(0.5, 5) * Worn.M2KW_PER_CLO;
            ColdCriterion criterion = ColdCriterion.values()[random.nextInt(2)];
            Cold still = new Cold(new Air(airC, radiantC, calm, humidity), metabolic, walking, criterion);
            Cold blown = new Cold(new Air(airC, radiantC, windy, humidity), metabolic, walking, criterion);
            String which = told(i, still, blown, p, basic);
            assertThat(blown.hours(basic, p)).as(which).isLessThanOrEqualTo(still.hours(basic, p) + 1e-6);
            assertThat(blown.required()).as(which).isGreaterThanOrEqualTo(still.required() - 1e-6);
        }
    }

    private record Cold(Air air, double metabolicWm2, double walkingMs, ColdCriterion criterion) {

        Motion motion() {
            return Motion.conditioned(air.speedMs(), walkingMs, metabolicWm2);
        }

        double required() {
            return value(RequiredInsulation.clo(air, metabolicWm2, motion(), criterion));
        }

        double hours(double basicM2KW, double permeability) {
            double resultant = ResultantInsulation.m2KW(basicM2KW, motion(), permeability);
            return value(DurationLimit.hours(air, metabolicWm2, motion(), criterion, resultant));
        }
    }

    @Test
    void inTheCoolMoreInsulationNeverMakesTheSkinColder() {
        int compared = 0;
        for (int i = 0; i < MANY; i++) {
            double airC = from(0, 15);
            Air air = new Air(airC, airC + from(-5, 5), from(0, 5), from(5, 100));
            double met = from(0.8, 2);
            double thin = from(0, 3);
            double thick = from(thin, 4);
            Body cold = new TwoNode(air, met, Worn.ordinary(thin), false).after(60);
            Body warm = new TwoNode(air, met, Worn.ordinary(thick), false).after(60);
            boolean swings = warm.sweatGM2H() > 20; // hard sweating goes up and down by the minute, see TwoNode
            compared += swings ? 0 : 1;
            assertThat(warm.skinC())
                    .as(told(i, air, met, thin, thick))
                    .isGreaterThanOrEqualTo(cold.skinC() - (swings ? 0.3 : 1e-3));
        }
        assertThat(compared).isGreaterThan(MANY / 2);
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
