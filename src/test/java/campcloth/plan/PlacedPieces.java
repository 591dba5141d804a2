package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.layout.Point;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Verifies a plan's pieces with a geometry library. */
final class PlacedPieces {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double TOUCHING_CM2 = 1e-4;
    private static final double EDGE_CM = 1e-6;

    private PlacedPieces() {}

    static void assertHold(CuttingPlan plan, String which) {
        List<Polygon> polygons =
                plan.placements().stream().map(PlacedPieces::polygon).toList();
        for (int i = 0; i < polygons.size(); i++) {
            Envelope box = polygons.get(i).getEnvelopeInternal();
            PlacedPiece placed = plan.placements().get(i);
            assertThat(box.getMinX()).as(which).isGreaterThanOrEqualTo(-EDGE_CM);
            assertThat(box.getMinY()).as(which).isGreaterThanOrEqualTo(-EDGE_CM);
            assertThat(box.getMaxX()).as(which).isLessThanOrEqualTo(plan.usableWidthCm() + EDGE_CM);
            assertThat(box.getMaxY()).as(which).isLessThanOrEqualTo(plan.netLengthCm() + EDGE_CM);
            assertThat(Math.abs(box.getMinX() - placed.xCm())).as(which).isLessThan(EDGE_CM);
            assertThat(Math.abs(box.getMinY() - placed.yCm())).as(which).isLessThan(EDGE_CM);
            for (int j = 0; j < i; j++) {
                assertThat(polygons.get(i).intersection(polygons.get(j)).getArea())
                        .as("%s: %s and %s", which, placed, plan.placements().get(j))
                        .isLessThan(TOUCHING_CM2);
            }
        }
        assertThat(plan.netLengthCm()).as(which).isGreaterThanOrEqualTo(plan.lowerBoundCm() - EDGE_CM);
        assertThat(plan.usedPercent())
                .as(which)
                .isCloseTo(
                        100
                                * polygons.stream()
                                        .mapToDouble(Polygon::getArea)
                                        .sum()
                                / (plan.usableWidthCm() * plan.netLengthCm()),
                        org.assertj.core.api.Assertions.within(1e-6));
    }

    private static Polygon polygon(PlacedPiece placed) {
        Coordinate[] ring = new Coordinate[placed.outlineCm().size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point point = placed.outlineCm().get(i % placed.outlineCm().size());
            ring[i] = new Coordinate(point.xCm(), point.yCm());
        }
        return FACTORY.createPolygon(ring);
    }
}
