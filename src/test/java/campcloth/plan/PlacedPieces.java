package campcloth.plan;

import static org.assertj.core.api.Assertions.assertThat;

import campcloth.layout.Point;
import java.util.List;
import java.util.stream.Stream;
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

    /** More pieces beside those of the plan. */
    static void assertHoldBeside(CuttingPlan plan, List<PlacedPiece> more, String which) {
        List<PlacedPiece> all =
                Stream.concat(plan.placements().stream(), more.stream()).toList();
        assertApart(all, plan.usableWidthCm(), plan.netLengthCm(), which);
    }

    /** All on the cloth, each where it says, none over another. */
    static void assertApart(List<PlacedPiece> placements, double widthCm, double lengthCm, String which) {
        List<Polygon> polygons = placements.stream().map(PlacedPieces::polygon).toList();
        for (int i = 0; i < polygons.size(); i++) {
            Envelope box = polygons.get(i).getEnvelopeInternal();
            PlacedPiece placed = placements.get(i);
            assertThat(box.getMinX()).as(which).isGreaterThanOrEqualTo(-EDGE_CM);
            assertThat(box.getMinY()).as(which).isGreaterThanOrEqualTo(-EDGE_CM);
            assertThat(box.getMaxX()).as(which).isLessThanOrEqualTo(widthCm + EDGE_CM);
            assertThat(box.getMaxY()).as(which).isLessThanOrEqualTo(lengthCm + EDGE_CM);
            assertThat(Math.abs(box.getMinX() - placed.xCm())).as(which).isLessThan(EDGE_CM);
            assertThat(Math.abs(box.getMinY() - placed.yCm())).as(which).isLessThan(EDGE_CM);
            for (int j = 0; j < i; j++) {
                assertThat(polygons.get(i).intersection(polygons.get(j)).getArea())
                        .as("%s: %s and %s", which, placed, placements.get(j))
                        .isLessThan(TOUCHING_CM2);
            }
        }
    }

    static void assertHold(CuttingPlan plan, String which) {
        assertApart(plan.placements(), plan.usableWidthCm(), plan.netLengthCm(), which);
        List<Polygon> polygons =
                plan.placements().stream().map(PlacedPieces::polygon).toList();
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
