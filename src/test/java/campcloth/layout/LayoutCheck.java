package campcloth.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Checks layouts with a geometry library, from the pieces as they were asked for: nothing of the engine is believed. */
final class LayoutCheck {

    private static final GeometryFactory GEOMETRY = new GeometryFactory();
    private static final double TOUCHING_CM2 = 1e-5;
    private static final double EDGE_CM = 1e-6;

    private LayoutCheck() {}

    static void holds(Layout layout, Strip strip, List<Piece> pieces, String story) {
        List<Geometry> laid = laid(layout);
        List<String> asked = new ArrayList<>();
        for (Piece piece : pieces) {
            for (int copy = 1; copy <= piece.count(); copy++) {
                asked.add(piece.name() + " " + copy);
            }
        }
        assertThat(layout.placements())
                .as(story)
                .extracting(p -> p.piece() + " " + p.copy())
                .containsExactlyInAnyOrderElementsOf(asked);
        double area = 0;
        double top = 0;
        for (int i = 0; i < laid.size(); i++) {
            Envelope box = laid.get(i).getEnvelopeInternal();
            assertThat(box.getMinX()).as(story).isGreaterThan(-EDGE_CM);
            assertThat(box.getMinY()).as(story).isGreaterThan(-EDGE_CM);
            assertThat(box.getMaxX()).as(story).isLessThan(strip.widthCm() + EDGE_CM);
            top = Math.max(top, box.getMaxY());
            area += laid.get(i).getArea();
            for (int j = 0; j < i; j++) {
                apart(
                        laid.get(i),
                        laid.get(j),
                        strip.gapCm(),
                        story + ": " + layout.placements().get(i) + " and "
                                + layout.placements().get(j));
            }
        }
        assertThat(layout.lengthCm()).as(story).isCloseTo(top, within(1e-6));
        assertThat(layout.lengthCm()).as(story).isGreaterThan(layout.lowerBoundCm() - 1e-6);
        assertThat(layout.lowerBoundCm()).as(story).isGreaterThan(area / strip.widthCm() - 1e-6);
        assertThat(layout.usedPercent()).as(story).isCloseTo(100 * area / strip.widthCm() / top, within(1e-6));
        lieAsAllowed(layout, pieces, story);
    }

    private static org.assertj.core.data.Offset<Double> within(double distance) {
        return org.assertj.core.data.Offset.offset(distance);
    }

    private static void apart(Geometry one, Geometry other, double gap, String story) {
        if (one.getEnvelopeInternal().distance(other.getEnvelopeInternal()) > gap) {
            return;
        }
        assertThat(one.intersection(other).getArea()).as(story).isLessThan(TOUCHING_CM2);
        if (gap > 0) {
            assertThat(one.distance(other)).as(story).isGreaterThan(gap - EDGE_CM);
        }
    }

    private static void lieAsAllowed(Layout layout, List<Piece> pieces, String story) {
        for (Placement placement : layout.placements()) {
            Piece piece = pieces.stream()
                    .filter(p -> p.name().equals(placement.piece()))
                    .findFirst()
                    .orElseThrow();
            assertThat(placement.turned() && !piece.turnable()).as(story).isFalse();
            if (!piece.mirrorable()) {
                boolean second = piece.pair() && placement.copy() % 2 == 0;
                assertThat(placement.mirrored()).as(story).isEqualTo(second);
            }
        }
    }

    /** The pieces on the cloth, worked out here from the outlines as they were asked for. */
    static List<Geometry> laid(Layout layout) {
        return layout.placements().stream()
                .map(placement -> laid(layout.pieceOf(placement).outline(), placement))
                .toList();
    }

    private static Geometry laid(Outline outline, Placement placement) {
        Geometry polygon = polygon(outline);
        Coordinate[] corners = polygon.getCoordinates();
        double signX = placement.turned() != placement.mirrored() ? -1 : 1;
        double signY = placement.turned() ? -1 : 1;
        for (Coordinate corner : corners) {
            corner.setX(signX * corner.getX());
            corner.setY(signY * corner.getY());
        }
        Envelope box = GEOMETRY.createPolygon(corners).getEnvelopeInternal();
        for (Coordinate corner : corners) {
            corner.setX(corner.getX() - box.getMinX() + placement.xCm());
            corner.setY(corner.getY() - box.getMinY() + placement.yCm());
        }
        return GEOMETRY.createPolygon(corners);
    }

    static Geometry polygon(Outline outline) {
        List<Point> points = outline.points();
        Coordinate[] corners = new Coordinate[points.size() + 1];
        for (int i = 0; i <= points.size(); i++) {
            Point point = points.get(i % points.size());
            corners[i] = new Coordinate(point.xCm(), point.yCm());
        }
        return GEOMETRY.createPolygon(corners);
    }
}
