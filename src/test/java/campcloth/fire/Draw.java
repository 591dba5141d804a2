package campcloth.fire;

import campcloth.cloth.Finish;
import campcloth.cloth.Fit;
import campcloth.cloth.Layer;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.event.FireRole;
import campcloth.event.OpenFire;
import campcloth.event.SafetyRule;
import campcloth.fibre.Blend;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Draws cloths and exposures, thresholds among them more often than chance would; the same seed draws the same. */
final class Draw {

    static final int CASES = 100_000;

    private static final List<String> ALL = Stream.of(
                    FireFixtures.CELLULOSIC,
                    FireFixtures.PROTEIN,
                    FireFixtures.MELTABLE,
                    FireFixtures.RESISTANT,
                    FireFixtures.UNNAMED)
            .flatMap(List::stream)
            .toList();
    private static final double[] EDGES_GSM = {10, 87.999, 88, 135.999, 136, 137, 372.999, 373, 374, 450, 2000};
    private static final double[] EDGES_PERCENT = {0.5, 5, 5.001, 9.999, 10, 20, 20.001, 50, 50.001, 90, 99.5};
    private static final double[] EDGES_M = {0.1, 0.56, 0.57, 0.99, 0.998, 1, 1.4, 1.5, 2.99, 3, 3.01, 10};

    private final SplittableRandom random;

    private Draw(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** Tries a property on many draws; a failure names the seed of the draw that broke it. */
    static void always(long seed, Consumer<Draw> property) {
        often(CASES, seed, property);
    }

    static void often(int cases, long seed, Consumer<Draw> property) {
        for (int i = 0; i < cases; i++) {
            try {
                property.accept(new Draw(seed + i));
            } catch (AssertionError | RuntimeException broken) {
                throw new AssertionError("seed " + (seed + i) + ": " + broken.getMessage(), broken);
            }
        }
    }

    static void claim(boolean holds, Object... counterexample) {
        if (!holds) {
            throw new AssertionError("broken by " + words(List.of(counterexample)));
        }
    }

    private static String words(Object what) {
        if (what instanceof List<?> several) {
            return several.stream().map(Draw::words).toList().toString();
        }
        return what instanceof WornCloth c
                ? String.join(
                        " ",
                        List.of(
                                c.blend().words() + ", " + c.weightGsm() + " g/m2",
                                c.surface() + " " + c.finish() + " " + c.weave(),
                                c.fit() + " " + c.layer()))
                : what.toString();
    }

    <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    boolean coin() {
        return random.nextBoolean();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    double weightGsm() {
        return coin() ? EDGES_GSM[random.nextInt(EDGES_GSM.length)] : between(10, 700);
    }

    double percent() {
        return coin() ? EDGES_PERCENT[random.nextInt(EDGES_PERCENT.length)] : between(0.1, 99.9);
    }

    double distanceM() {
        return coin() ? EDGES_M[random.nextInt(EDGES_M.length)] : between(0.1, 12);
    }

    Optional<Double> perhapsDistanceM() {
        return coin() ? Optional.of(distanceM()) : Optional.empty();
    }

    Optional<Double> perhapsFireKw() {
        return coin() ? Optional.of(between(1, 1000)) : Optional.empty();
    }

    /** One to four fibres. */
    Map<String, Double> shares() {
        Map<String, Double> shares = new TreeMap<>();
        double left = 100;
        int parts = 1 + random.nextInt(4);
        for (int i = 1; i < parts; i++) {
            double part = left * percent() / 100;
            shares.merge(one(ALL), part, Double::sum);
            left -= part;
        }
        shares.merge(one(ALL), left, Double::sum);
        return shares;
    }

    static Blend blend(Map<String, Double> shares) {
        Map<String, Double> rounded = new TreeMap<>(shares);
        rounded.replaceAll((key, percent) -> Math.min(percent, 100));
        return FireFixtures.FIBRES.blend(rounded);
    }

    WornCloth cloth(Blend blend) {
        return new WornCloth(
                blend,
                weightGsm(),
                one(List.of(Surface.values())),
                one(List.of(Finish.values())),
                one(List.of(Weave.values())),
                one(List.of(Fit.values())),
                one(List.of(Layer.values())));
    }

    WornCloth cloth() {
        return cloth(blend(shares()));
    }

    FireRole role() {
        return one(List.of(FireRole.values()));
    }

    FireRole roleAtFire() {
        return one(List.of(FireRole.values()).subList(1, FireRole.values().length));
    }

    Exposure exposure() {
        return new Exposure(role(), perhapsDistanceM(), perhapsFireKw());
    }

    Exposure exposureAtFire() {
        return new Exposure(roleAtFire(), perhapsDistanceM(), perhapsFireKw());
    }

    /** None to four rules of any kind. */
    List<SafetyRule> rules() {
        return new RuleDraw(this).rules();
    }

    OpenFire fire() {
        return new OpenFire(role(), perhapsDistanceM(), perhapsFireKw());
    }
}
