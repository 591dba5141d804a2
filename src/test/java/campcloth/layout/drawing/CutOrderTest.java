package campcloth.layout.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.layout.Effort;
import campcloth.layout.Layout;
import campcloth.layout.Nesting;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Point;
import campcloth.layout.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CutOrderTest {

    private static Shape box(double left, double low, double width, double height) {
        return new Shape(Outline.rectangle(width, height).movedTo(left, low).points());
    }

    @Test
    void whatACrossCutFreesComesFirst() {
        List<Shape> shapes = List.of(box(0, 100, 60, 40), box(60, 0, 40, 50), box(0, 0, 60, 100), box(60, 50, 40, 50));
        CutOrder order = CutOrder.of(shapes);
        assertThat(order.crossCutsCm()).containsExactly(100.0);
        assertThat(order.order()).containsExactly(2, 1, 3, 0);
    }

    @Test
    void shapesThatNoStraightCutPartsComeFromTheCutEdgeOn() {
        // four boxes round a fifth
        List<Shape> wheel = List.of(
                box(20, 20, 20, 20), box(40, 20, 20, 40), box(0, 40, 40, 20), box(0, 0, 20, 40), box(20, 0, 40, 20));
        assertThat(CutOrder.of(wheel).order()).containsExactly(3, 4, 0, 1, 2);
    }

    @Test
    void aShapeInTheMouthOfAnotherStillHasAPlace() {
        Shape mouth = new Shape(List.of(
                new Point(0, 0),
                new Point(50, 0),
                new Point(50, 10),
                new Point(10, 10),
                new Point(10, 40),
                new Point(50, 40),
                new Point(50, 50),
                new Point(0, 50)));
        assertThat(CutOrder.of(List.of(box(20, 12, 20, 20), mouth)).order()).containsExactlyInAnyOrder(0, 1);
        assertThat(Below.isBelow(mouth, box(20, 12, 20, 20))).isTrue();
        assertThat(Below.isBelow(box(20, 12, 20, 20), mouth)).isTrue();
    }

    @Test
    void nothingUncutLiesBetweenAPartAndTheCutEdge() {
        long seed = 9;
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 60; round++) {
            List<Shape> shapes = laid(random);
            CutOrder order = CutOrder.of(shapes);
            String which = "round " + round + " of seed " + seed + ": " + shapes;
            assertThat(order.order())
                    .as(which)
                    .containsExactlyInAnyOrderElementsOf(
                            IntStream.range(0, shapes.size()).boxed().toList());
            for (int late = 1; late < shapes.size(); late++) {
                for (int early = 0; early < late; early++) {
                    Shape first = shapes.get(order.order().get(early));
                    Shape then = shapes.get(order.order().get(late));
                    assertThat(liesUnder(then, first)).as(which).isFalse();
                }
            }
            for (double cut : order.crossCutsCm()) {
                assertThat(shapes).as(which).noneMatch(s -> s.lowCm() < cut - 1e-6 && s.topCm() > cut + 1e-6);
            }
        }
    }

    /** By sampled lines along the cloth, another way than the order is found. */
    private static boolean liesUnder(Shape lower, Shape upper) {
        double from = Math.max(lower.leftCm(), upper.leftCm());
        double to = Math.min(lower.rightCm(), upper.rightCm());
        return IntStream.range(1, 40)
                .mapToDouble(i -> from + (to - from) * i / 40)
                .anyMatch(x -> to - from > 1e-3 && lower.highestAt(x) <= upper.lowestAt(x) + 1e-6);
    }

    private static List<Shape> laid(SplittableRandom random) {
        List<Piece> pieces = new ArrayList<>();
        int count = random.nextInt(2, 12);
        for (int i = 0; i < count; i++) {
            double width = random.nextDouble(10, 60);
            double height = random.nextDouble(10, 80);
            Outline outline = random.nextBoolean()
                    ? Outline.rectangle(width, height)
                    : Outline.of(List.of(
                            new Point(0, 0), new Point(width, 0), new Point(width * random.nextDouble(), height)));
            pieces.add(new Piece("p" + i, outline, 1, true, false, false));
        }
        Layout layout = Nesting.layout(Strip.ofWidth(120), pieces, new Effort(0.02, 1));
        return layout.placements().stream()
                .map(at -> new Shape(layout.outlineOf(at).points()))
                .toList();
    }
}
