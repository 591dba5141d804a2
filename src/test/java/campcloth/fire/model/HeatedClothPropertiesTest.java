package campcloth.fire.model;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What holds for every cloth in every heat that the model takes; 100,000 draws each, a failure names its seed. */
class HeatedClothPropertiesTest {

    private static final int CASES = 100_000;

    /** Larger than the error of the model, smaller than any difference that matters. */
    private static final double K = 1e-3;

    private static final double RELATIVE = 1e-6;

    private interface Property {
        boolean holds(HeatedCloth cloth, double lowFlux, double highFlux, double seconds, double targetC);
    }

    @Test
    void moreHeatIsNeverColderNorLater() {
        always(1_000_000, (cloth, low, high, seconds, target) -> {
            boolean warmer = cloth.temperatureC(high, seconds) >= cloth.temperatureC(low, seconds) - K;
            return warmer && notLater(cloth.secondsTo(target, high), cloth.secondsTo(target, low));
        });
    }

    @Test
    void heavierClothIsNeverSoonerNorWarmer() {
        always(2_000_000, (cloth, low, high, seconds, target) -> {
            double heavier = Math.min(2000, cloth.weightGsm() * (1 + high / 20));
            HeatedCloth heavy = new HeatedCloth(cloth.balance(), heavier, cloth.specificHeatJGK());
            boolean colder = heavy.temperatureC(high, seconds) <= cloth.temperatureC(high, seconds) + K;
            return colder && notLater(cloth.secondsTo(target, high), heavy.secondsTo(target, high));
        });
    }

    @Test
    void itOnlyWarmsAndNeverBeyondTheSteadyTemperature() {
        always(3_000_000, (cloth, low, high, seconds, target) -> {
            double first = cloth.temperatureC(high, seconds / 2);
            double second = cloth.temperatureC(high, seconds);
            return first >= 20
                    && second >= first - K
                    && second <= cloth.balance().steadyC(high) + 1e-9;
        });
    }

    @Test
    void timeAndTemperatureAreOneCurve() {
        always(4_000_000, (cloth, low, high, seconds, target) -> {
            Optional<Double> until = cloth.secondsTo(target, high);
            double steadyC = cloth.balance().steadyC(high);
            if (target <= 20) {
                return until.equals(Optional.of(0.0));
            }
            return until.map(s -> s > 86_400 || Math.abs(cloth.temperatureC(high, s) - target) < K)
                    .orElse(target > steadyC - K);
        });
    }

    @Test
    void theSteadyTemperatureIsHeldByItsFlux() {
        always(5_000_000, (cloth, low, high, seconds, target) -> {
            HeatBalance balance = cloth.balance();
            boolean held = Math.abs(balance.fluxKwM2(balance.steadyC(high)) - high) < 1e-9;
            return held && balance.steadyC(low) <= balance.steadyC(high);
        });
    }

    private static boolean notLater(Optional<Double> one, Optional<Double> other) {
        return other.isEmpty() || one.isPresent() && one.get() <= other.get() * (1 + RELATIVE) + RELATIVE;
    }

    private static void always(long firstSeed, Property property) {
        for (long seed = firstSeed; seed < firstSeed + CASES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            HeatBalance balance = random.nextBoolean() ? HeatBalance.ONE_SIDE : HeatBalance.BOTH_SIDES;
            HeatedCloth cloth = new HeatedCloth(
                    balance, Math.exp(random.nextDouble(Math.log(10), Math.log(2000))), random.nextDouble(0.8, 2));
            double[] flux = {flux(random), flux(random)};
            Arrays.sort(flux);
            double seconds = Math.exp(random.nextDouble(-3, 8));
            double target = random.nextDouble(15, 480);
            if (!property.holds(cloth, flux[0], flux[1], seconds, target)) {
                throw new AssertionError("seed " + seed + ": " + cloth.weightGsm() + " g/m2, "
                        + cloth.specificHeatJGK() + " J/(g K), one side " + (balance == HeatBalance.ONE_SIDE)
                        + ", flux "
                        + flux[0] + " and " + flux[1] + " kW/m2, " + seconds + " s, target " + target + " C");
            }
        }
    }

    private static double flux(SplittableRandom random) {
        return random.nextInt(4) == 0 ? random.nextDouble(20) : random.nextDouble(3.2);
    }
}
