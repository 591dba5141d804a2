package campcloth.layout.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

class CoverTest {

    private static Geometry polygon(Ring ring) {
        Coordinate[] corners = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            corners[i] = new Coordinate(ring.x[i % ring.size()], ring.y[i % ring.size()]);
        }
        return new GeometryFactory().createPolygon(corners);
    }

    private static Ring star(long seed, int corners, double least) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] x = new double[corners];
        double[] y = new double[corners];
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            double reach = 50 * (least + (1 - least) * random.nextDouble());
            x[i] = reach * Math.cos(angle);
            y[i] = reach * Math.sin(angle);
        }
        return Ring.of(x, y);
    }

    @Test
    void coversContainWhatTheyCoverAndKeepItsBox() {
        for (long seed = 1; seed <= 200; seed++) {
            Ring ring = star(seed, 20 + (int) seed, 0.3 + 0.003 * seed);
            Ring cover = Cover.of(ring, 24, 4);
            Geometry covering = polygon(cover);
            assertThat(covering.isValid()).as("seed " + seed).isTrue();
            assertThat(polygon(ring).difference(covering).getArea())
                    .as("seed " + seed)
                    .isLessThan(1e-9);
            assertThat(covering.getEnvelopeInternal()).isEqualTo(polygon(ring).getEnvelopeInternal());
            assertThat(cover.size()).as("seed " + seed).isLessThanOrEqualTo(24);
        }
    }

    @Test
    void outlinesWithinTheLimitsStayAsTheyAre() {
        Ring ring = star(1, 20, 0.4);
        assertThat(Cover.of(ring, 20, 20)).isSameAs(ring);
    }

    @Test
    void finelyDrawnCirclesHardlyGrow() {
        Ring circle = star(1, 2000, 1);
        Ring cover = Cover.of(circle, 64, 8);
        assertThat(cover.size()).isLessThanOrEqualTo(64);
        assertThat(cover.area() / circle.area()).isBetween(1.0, 1.005);
    }

    @Test
    void convexPartsFillTheOutlineWithoutOverlap() {
        for (long seed = 1; seed <= 300; seed++) {
            Ring ring = star(seed, 5 + (int) seed % 40, 0.2);
            List<Ring> parts = ConvexParts.of(ring);
            double sum = parts.stream().mapToDouble(Ring::area).sum();
            Geometry union =
                    UnaryUnionOp.union(parts.stream().map(CoverTest::polygon).toList());
            assertThat(parts).as("seed " + seed).allMatch(Ring::isConvex);
            assertThat(sum).as("seed " + seed).isCloseTo(ring.area(), within(1e-8));
            assertThat(union.symDifference(polygon(ring)).getArea())
                    .as("seed " + seed)
                    .isLessThan(1e-7);
        }
    }
}
