package campcloth.garment.design;

import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Shapes for a geometry library to check with. */
final class Shapes {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final int STEPS = 2000;
    private static final double FAR = 1e4;

    private Shapes() {}

    static Polygon polygon(List<Point> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point point = points.get(i % points.size());
            ring[i] = new Coordinate(point.xCm(), point.yCm());
        }
        return FACTORY.createPolygon(ring);
    }

    /** A sector by its definition, drawn finely. */
    static Polygon sector(CircleSector sector) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            points.add(at(sector.outerCm(), sector.from() + i * sector.angle() / STEPS));
        }
        for (int i = STEPS; i >= 0; i--) {
            points.add(at(sector.innerCm(), sector.from() + i * sector.angle() / STEPS));
        }
        return polygon(points);
    }

    private static Point at(double radius, double direction) {
        return new Point(radius * Math.cos(direction), radius * Math.sin(direction));
    }

    static Geometry scaled(Geometry shape, double across, double along) {
        return AffineTransformation.scaleInstance(across, along).transform(shape);
    }

    /** The strip of the plane between two lines along y. */
    static Geometry strip(double fromCm, double toCm) {
        return FACTORY.toGeometry(new Envelope(fromCm, toCm, -FAR, FAR));
    }

    /** The strip of the plane between two lines along x. */
    static Geometry level(double fromCm, double toCm) {
        return FACTORY.toGeometry(new Envelope(-FAR, FAR, fromCm, toCm));
    }

    /** Length of a shape along the line at x. */
    static double sectionCm(Geometry shape, double xCm) {
        Coordinate[] ends = {new Coordinate(xCm, -FAR), new Coordinate(xCm, FAR)};
        return shape.intersection(FACTORY.createLineString(ends)).getLength();
    }
}
