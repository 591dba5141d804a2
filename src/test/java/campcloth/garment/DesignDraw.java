package campcloth.garment;

import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Refused;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Consumer;

/** Draws wearers, options and cloths for a design; the same seed draws the same. */
final class DesignDraw {

    /** One draw, made up where the design did not refuse it. */
    record Made(Design design, Map<String, Double> wearer, Map<String, Object> options, SewnCloth cloth) {

        Garment garment() {
            return design.madeUp(Measurements.of(wearer), Options.of(options), cloth);
        }

        Optional<Garment> unlessRefused() {
            try {
                return Optional.of(garment());
            } catch (Refused refused) {
                return Optional.empty();
            }
        }
    }

    private static final int ROUNDS = 400;
    private static final List<Optional<String>> FIBRES =
            List.of(Optional.empty(), Optional.of("wool"), Optional.of("flax"), Optional.of("polyester"));

    private final SplittableRandom random;
    private final Design design;

    private DesignDraw(Design design, long seed) {
        this.design = design;
        this.random = new SplittableRandom(seed);
    }

    /** Tries a property of every design on many draws; a failure names design, seed and draw. */
    static void always(long seed, Consumer<Made> property) {
        for (Design design : Designs.all()) {
            for (int i = 0; i < ROUNDS; i++) {
                Made made = new DesignDraw(design, seed + i).plausible();
                try {
                    property.accept(made);
                } catch (AssertionError | RuntimeException broken) {
                    throw new AssertionError(
                            design.key() + ", seed " + (seed + i) + ", " + made + ": " + broken.getMessage(), broken);
                }
            }
        }
    }

    /** The same for those draws that can be made up, of which there must be enough to mean something. */
    static void alwaysMadeUp(long seed, java.util.function.BiConsumer<Made, Garment> property) {
        Map<String, Integer> counts = new TreeMap<>();
        always(
                seed,
                made -> made.unlessRefused().ifPresent(garment -> {
                    counts.merge(made.design().key(), 1, Integer::sum);
                    property.accept(made, garment);
                }));
        for (Design design : Designs.all()) {
            if (counts.getOrDefault(design.key(), 0) < ROUNDS / 4) {
                throw new AssertionError("of " + ROUNDS + " draws of " + design.key() + " could be made up: " + counts);
            }
        }
    }

    private Made plausible() {
        Map<String, Double> wearer = new TreeMap<>();
        for (Measurement measurement : design.measurements()) {
            if (random.nextInt(4) > 0) {
                wearer.put(measurement.key(), near(measurement));
            }
        }
        return new Made(design, wearer, options(), cloth());
    }

    private double near(Measurement measurement) {
        double least = measurement.range().least();
        double most = measurement.range().most();
        double middle = measurement.usualCm().orElse(least + (most - least) * 0.4);
        return Math.min(most, Math.max(least, middle * random.nextDouble(0.75, 1.3)));
    }

    private Map<String, Object> options() {
        Map<String, Object> options = new TreeMap<>();
        for (Option option : design.options()) {
            if (random.nextInt(3) == 0) {
                options.put(option.key(), value(option.value()));
            }
        }
        return options;
    }

    private Object value(Option.Value value) {
        if (value instanceof Option.Cm cm) {
            double most = Math.min(
                    cm.range().most(), Math.max(cm.usualCm() * 1.5, cm.range().least() + 10));
            return random.nextInt(5) == 0
                    ? cm.range().least()
                    : random.nextDouble(cm.range().least(), most);
        }
        if (value instanceof Option.Count count) {
            return random.nextInt(
                    (int) count.range().least(), (int) count.range().most() + 1);
        }
        return random.nextBoolean();
    }

    private SewnCloth cloth() {
        boolean washed = random.nextBoolean();
        return new SewnCloth(
                random.nextDouble(40, 500),
                random.nextDouble(0.15, 2.5),
                random.nextBoolean() ? Surface.PLAIN : Surface.RAISED,
                random.nextInt(3) == 0
                        ? Optional.empty()
                        : Optional.of(Weave.values()[random.nextInt(Weave.values().length)]),
                random.nextInt(4) == 0 ? Optional.of(Finish.FULLED) : Optional.empty(),
                FIBRES.get(random.nextInt(FIBRES.size())),
                washed ? 0 : random.nextDouble(0, 12),
                washed ? 0 : random.nextDouble(-2, 8),
                random.nextDouble(80, 160));
    }
}
