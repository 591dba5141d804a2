package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Instances whose best length is known because they were made by cutting a full strip into pieces. */
class KnownOptimumTest {

    private static final double WIDTH = 140;
    private static final double LENGTH = 200;
    private static final double GUILLOTINE_SECONDS = 1;

    private record Box(double x, double y, double width, double height) {}

    @Test
    void rectanglesCutFromAStripComeCloseToIt() {
        double sum = 0;
        double worst = 0;
        int reached = 0;
        int cases = 40;
        for (long seed = 1; seed <= cases; seed++) {
            Random random = new Random(seed);
            int count = 3 + (int) (seed % 8);
            List<Piece> pieces = new ArrayList<>();
            for (Box box : cut(count, random)) {
                pieces.add(new Piece(
                        "piece " + pieces.size(), Outline.rectangle(box.width, box.height), 1, true, false, false));
            }
            Layout layout = check(pieces, seed);
            double excess = layout.lengthCm() / LENGTH - 1;
            assertThat(excess).as("seed " + seed + ", " + count + " pieces").isGreaterThan(-1e-9);
            sum += excess;
            worst = Math.max(worst, excess);
            reached += excess < 1e-6 ? 1 : 0;
        }
        System.out.printf(
                "rectangles, 3 to 10 pieces: mean excess %.2f %%, worst %.2f %%, optimum in %d of %d%n",
                100 * sum / cases, 100 * worst, reached, cases);
        assertThat(worst).isLessThan(0.10);
        assertThat(sum / cases).isLessThan(0.02);
    }

    @Test
    void trapezoidsCutFromAStripComeCloseToIt() {
        double worst = 0;
        for (long seed = 1; seed <= 15; seed++) {
            Random random = new Random(seed);
            List<Piece> pieces = new ArrayList<>();
            for (Box box : cut(2 + (int) (seed % 3), random)) {
                addSlantedHalves(box, random, pieces);
            }
            worst = Math.max(worst, check(pieces, seed).lengthCm() / LENGTH - 1);
        }
        System.out.printf("trapezoids, 4 to 8 pieces: worst excess %.2f %%%n", 100 * worst);
        assertThat(worst).isLessThan(0.15);
    }

    @Test
    void rectanglesOfFullCutsComeWithinThreePercent() {
        for (int count : new int[] {10, 20, 40}) {
            double[] excess = new double[3];
            for (int seed = 1; seed <= excess.length; seed++) {
                List<Piece> pieces = Guillotine.pieces(count, seed);
                Strip strip = Strip.ofWidth(Guillotine.WIDTH);
                Layout layout = Nesting.layout(strip, pieces, new Effort(GUILLOTINE_SECONDS, seed));
                LayoutCheck.holds(layout, strip, pieces, count + " pieces, seed " + seed);
                excess[seed - 1] = 100 * (layout.lengthCm() / Guillotine.LENGTH - 1);
            }
            System.out.println(count + " rectangles: excess in % " + Arrays.toString(excess));
            Arrays.sort(excess);
            assertThat(excess[1]).as(count + " pieces, median").isBetween(-1e-6, 3.0);
        }
    }

    @Test
    void rectanglesKeepTheirGap() {
        for (int seed = 1; seed <= 20; seed++) {
            List<Piece> pieces = Guillotine.pieces(8 + seed, seed);
            Strip strip = new Strip(Guillotine.WIDTH + 0.3, 0.7);
            Layout layout = Nesting.layout(strip, pieces, new Effort(0.1, seed));
            LayoutCheck.holds(layout, strip, pieces, "seed " + seed);
        }
    }

    private static Layout check(List<Piece> pieces, long seed) {
        Collections.shuffle(pieces, new Random(seed));
        Strip strip = Strip.ofWidth(WIDTH);
        Layout layout = Nesting.layout(strip, pieces, new Effort(0.3, seed));
        LayoutCheck.holds(layout, strip, pieces, "seed " + seed);
        assertThat(layout.lowerBoundCm()).as("seed " + seed).isLessThan(LENGTH + 1e-6);
        return layout;
    }

    private static void addSlantedHalves(Box box, Random random, List<Piece> pieces) {
        double low = box.width * (0.2 + 0.6 * random.nextDouble());
        double high = box.width * (0.2 + 0.6 * random.nextDouble());
        Outline left = RandomPieces.outline(0, 0, low, 0, high, box.height, 0, box.height);
        Outline right = RandomPieces.outline(low, 0, box.width, 0, box.width, box.height, high, box.height);
        pieces.add(new Piece("left " + pieces.size(), left, 1, true, false, false));
        pieces.add(new Piece("right " + pieces.size(), right.turned(), 1, true, false, false));
    }

    /** Cuts through and through, always of the largest box, at whole centimetres. */
    private static List<Box> cut(int count, Random random) {
        List<Box> boxes = new ArrayList<>(List.of(new Box(0, 0, WIDTH, LENGTH)));
        while (boxes.size() < count) {
            boxes.sort((a, b) -> Double.compare(b.width * b.height, a.width * a.height));
            Box box = boxes.remove(0);
            double part = 0.25 + 0.5 * random.nextDouble();
            if (random.nextBoolean()) {
                double at = Math.rint(part * box.width);
                boxes.add(new Box(box.x, box.y, at, box.height));
                boxes.add(new Box(box.x + at, box.y, box.width - at, box.height));
            } else {
                double at = Math.rint(part * box.height);
                boxes.add(new Box(box.x, box.y, box.width, at));
                boxes.add(new Box(box.x, box.y + at, box.width, box.height - at));
            }
        }
        return boxes;
    }
}
