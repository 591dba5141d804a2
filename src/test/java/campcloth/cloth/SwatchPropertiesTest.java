package campcloth.cloth;

import campcloth.figure.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** What holds of any swatch, drawn at random; a failure names its seed. */
class SwatchPropertiesTest {

    private static final int CASES = 20_000;
    private static final double ROUNDING = 0.002;

    @Test
    void theIntervalHoldsTheMeanAndNeverLessThanCanBeMisread() {
        always(1, random -> {
            List<MarkPair> pairs = pairs(random);
            Figure figure = warp(pairs);
            double mean = pairs.stream()
                    .mapToDouble(p -> p.shorterPercent(1))
                    .average()
                    .orElseThrow();
            claim(figure.low() <= mean + ROUNDING && figure.high() >= mean - ROUNDING, pairs, figure);
            double misread = pairs.stream()
                    .mapToDouble(p -> 10 / p.beforeCm() * (1 + p.afterCm().get(0) / p.beforeCm()))
                    .average()
                    .orElseThrow();
            double most = Property.SHRINK_WARP_PERCENT.range().most();
            claim(figure.high() >= Math.min(most, mean + misread) - ROUNDING, pairs, figure);
        });
    }

    @Test
    void whatIsCutLongerByTheShrinkageComesOutAsLongAsWanted() {
        always(2, random -> {
            MarkPair pair = pairs(random).get(0);
            double shrunk = warp(List.of(pair)).value() / 100;
            double wantedCm = 10 + 290 * random.nextDouble();
            double cutCm = wantedCm / (1 - shrunk);
            double washedCm = cutCm * pair.afterCm().get(0) / pair.beforeCm();
            claim(Math.abs(washedCm - wantedCm) < 1e-4 * wantedCm, pair, wantedCm, washedCm);
        });
    }

    @Test
    void aPairLikeTheMeanNeverWidensTheInterval() {
        always(3, random -> {
            List<MarkPair> pairs = new ArrayList<>(samePlace(random, 2 + random.nextInt(9)));
            double before = halfWidth(warp(pairs));
            double mean = pairs.stream()
                    .mapToDouble(p -> p.afterCm().get(0))
                    .average()
                    .orElseThrow();
            pairs.add(new MarkPair(50, List.of(mean)));
            claim(halfWidth(warp(pairs)) <= before + ROUNDING, pairs);
        });
    }

    @Test
    void noIntervalIsWiderThanTheSpreadOfItsMarksAllows() {
        // standard deviation <= range / 2 x sqrt(n / (n - 1)), so the half width <= t x range / 2 / sqrt(n - 1)
        double[] t = {12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201};
        always(4, random -> {
            int count = 2 + random.nextInt(11);
            List<MarkPair> pairs = samePlace(random, count);
            double[] percents = pairs.stream()
                    .mapToDouble(p -> p.shorterPercent(1))
                    .sorted()
                    .toArray();
            double range = percents[count - 1] - percents[0];
            double most = Math.max(0.42, t[count - 2] * range / 2 / Math.sqrt(count - 1));
            claim(halfWidth(warp(pairs)) <= most + ROUNDING, pairs);
        });
    }

    @Test
    void unitsCarryThrough() {
        always(5, random -> {
            double gsm = 50 + 500 * random.nextDouble();
            double sideCm = 5 + 45 * random.nextDouble();
            WeighedPieces.Piece piece = new WeighedPieces.Piece(sideCm, sideCm, gsm * sideCm * sideCm / 10_000);
            WeighedPieces.Piece doubled = new WeighedPieces.Piece(2 * sideCm, sideCm, 2 * piece.massG());
            claim(Math.abs(piece.weightGsm() - gsm) < 1e-9 * gsm, piece);
            claim(Math.abs(doubled.weightGsm() - gsm) < 1e-9 * gsm, doubled);
            LayerStack stack = new LayerStack(4, 10, 200, 20, 0.1);
            LayerStack larger = new LayerStack(4, 10, 400, 40, 0.1);
            claim(Math.abs(stack.pressureKPa() - larger.pressureKPa()) < 1e-12, larger);
        });
    }

    private static List<MarkPair> pairs(SplittableRandom random) {
        List<MarkPair> pairs = new ArrayList<>();
        for (int i = 1 + random.nextInt(12); i > 0; i--) {
            double before = 20 + 60 * random.nextDouble();
            pairs.add(new MarkPair(before, List.of(before * (1.04 - 0.43 * random.nextDouble()))));
        }
        return pairs;
    }

    /** Marks 50 cm apart that differ little, so that no interval is cut at what a figure can be. */
    private static List<MarkPair> samePlace(SplittableRandom random, int count) {
        List<MarkPair> pairs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pairs.add(new MarkPair(50, List.of(42 + 0.8 * random.nextDouble())));
        }
        return pairs;
    }

    private static double halfWidth(Figure figure) {
        return figure.high() - figure.value();
    }

    private static Figure warp(List<MarkPair> pairs) {
        Swatch swatch = new Swatch(
                SwatchSamples.DAY,
                "",
                true,
                Optional.empty(),
                Optional.of(SwatchSamples.marks(pairs)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return java.util.Objects.requireNonNull(
                SwatchFigures.of(swatch).figures().get(Property.SHRINK_WARP_PERCENT));
    }

    private static void always(long seed, Consumer<SplittableRandom> property) {
        for (int i = 0; i < CASES; i++) {
            long drawn = seed * 1_000_000 + i;
            try {
                property.accept(new SplittableRandom(drawn));
            } catch (AssertionError | RuntimeException broken) {
                throw new AssertionError("seed " + drawn + ": " + broken.getMessage(), broken);
            }
        }
    }

    private static void claim(boolean holds, Object... counterexample) {
        if (!holds) {
            throw new AssertionError("broken by " + List.of(counterexample));
        }
    }
}
