package campcloth.cloth;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.fibre.Blend;
import campcloth.fibre.TestFibres;
import campcloth.figure.Basis;
import campcloth.figure.Fault;
import campcloth.figure.Figure;
import campcloth.figure.ReferenceTable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/** Cloths for the tests of this room. */
final class Samples {

    /** Every fibre alone, and blends of every sort. */
    static final List<Blend> BLENDS = Stream.concat(
                    TestFibres.table().all().stream().map(Blend::pure),
                    Stream.of(
                                    "polyester 65; cotton 35",
                                    "flax 55; cotton 45",
                                    "flax 55; viscose 45",
                                    "wool 80; polyamide 20",
                                    "wool 50; acrylic 50",
                                    "wool 70; cashmere 30",
                                    "mohair 60; silk 40",
                                    "wool 60; polyester 25; silk 15",
                                    "cotton 97; elastane 3",
                                    "polyester 50; viscose 45; elastane 5",
                                    "cotton 85; other 15",
                                    "glass 99.5; polypropylene 0.5",
                                    "jute 40; hemp 30; flax 30",
                                    "modacrylic 60; cotton 40")
                            .map(TestFibres::blend))
            .toList();

    private Samples() {}

    static Cloth cloth(Blend blend, Weave weave, Surface surface, Finish finish) {
        return new Cloth("sample", blend, weave, surface, finish, false, false, Map.of(), "");
    }

    static Cloth cloth(String blend, Weave weave, Finish finish) {
        return cloth(TestFibres.blend(blend), weave, Surface.PLAIN, finish);
    }

    static Cloth cloth(String blend, Weave weave, Finish finish, double weightGsm) {
        return cloth(blend, weave, finish).with(Property.WEIGHT_GSM, known(weightGsm));
    }

    static Figure known(double value) {
        return Figure.exact(value, Basis.MEASURED, "test");
    }

    static Figure known(double low, double value, double high) {
        return new Figure(value, low, high, Basis.DECLARED, "test");
    }

    static Cloth any(RandomGenerator random) {
        return cloth(
                pick(random, BLENDS),
                pick(random, List.of(Weave.values())),
                pick(random, List.of(Surface.values())),
                pick(random, List.of(Finish.values())));
    }

    /** Any cloth, often of known weight or thickness, now and then one that stretches. */
    static Cloth drawn(RandomGenerator random) {
        Cloth cloth = any(random);
        if (random.nextInt(5) > 0) {
            cloth = cloth.with(Property.WEIGHT_GSM, known(between(random, 20, 900)));
        }
        if (random.nextBoolean()) {
            cloth = cloth.with(Property.THICKNESS_MM, known(between(random, 0.1, 8)));
        }
        return stretching(cloth, random.nextInt(4) == 0);
    }

    /** The same cloth, stretching or not. */
    static Cloth stretching(Cloth cloth, boolean stretch) {
        return new Cloth(
                cloth.name(),
                cloth.blend(),
                cloth.weave(),
                cloth.surface(),
                cloth.finish(),
                cloth.nap(),
                stretch,
                cloth.figures(),
                cloth.note());
    }

    /** The same cloth with another finish. */
    static Cloth refinished(Cloth cloth, Finish finish) {
        return new Cloth(
                cloth.name(),
                cloth.blend(),
                cloth.weave(),
                cloth.surface(),
                finish,
                cloth.nap(),
                cloth.stretch(),
                cloth.figures(),
                cloth.note());
    }

    static <T> T pick(RandomGenerator random, List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    static double between(RandomGenerator random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    static double value(Cloth cloth, Property property) {
        return Estimates.complete(cloth).required(property).value();
    }

    /** Runs a check on many seeds; tells the seed of the one that fails. */
    static void tries(long firstSeed, int times, Consumer<SplittableRandom> check) {
        for (int i = 0; i < times; i++) {
            long seed = firstSeed + i;
            try {
                check.accept(new SplittableRandom(seed));
            } catch (AssertionError | RuntimeException failure) {
                throw new AssertionError("seed " + seed + ": " + failure.getMessage(), failure);
            }
        }
    }

    static void everyCombination(Consumer<Cloth> check) {
        for (Weave weave : Weave.values()) {
            for (Finish finish : Finish.values()) {
                for (Surface surface : Surface.values()) {
                    for (Blend blend : BLENDS) {
                        check.accept(cloth(blend, weave, surface, finish));
                    }
                }
            }
        }
    }

    /** The rows of a reference file, none of which may be broken. */
    static void rows(String file, Consumer<ReferenceTable.Row> check) {
        List<Fault> faults = new ArrayList<>();
        try (Reader text = new InputStreamReader(
                Objects.requireNonNull(Samples.class.getResourceAsStream(file)), StandardCharsets.UTF_8)) {
            List<ReferenceTable.Row> rows =
                    ReferenceTable.read(file, text, List.of(), faults).map(row -> row);
            assertThat(faults).isEmpty();
            assertThat(rows).isNotEmpty();
            rows.forEach(check);
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }

    static String words(Cloth cloth) {
        return cloth.blend().words() + ", " + cloth.weave() + ", " + cloth.surface() + ", " + cloth.finish();
    }
}
