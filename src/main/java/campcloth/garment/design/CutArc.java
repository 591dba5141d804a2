package campcloth.garment.design;

import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A round edge as it is cut: the finished circle widened for what washing takes (by one factor across the cloth and one along it,
 * which makes it an ellipse) and moved outwards by the allowance, as a chain of straight cuts. The cuts run on the side where
 * they leave more cloth, no more than {@value #MOST_OFF_CM} cm beside the true line.
 *
 * @param acrossCm half-axis across the cloth, without the allowance
 * @param alongCm half-axis along the cloth
 * @param outwardCm how far outside the ellipse the cut runs; negative for a cut inside
 */
record CutArc(double acrossCm, double alongCm, double outwardCm) {

    /** Project choice: finer than chalk. */
    static final double MOST_OFF_CM = 0.05;

    /** Cuts that touch the true line from outside: for a hem. The directions are those of the finished circle's radii. */
    List<Point> around(double from, double to) {
        double first = normal(from);
        double last = normal(to);
        int cuts = steps(last - first);
        double step = (last - first) / cuts;
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < cuts; i++) {
            corners.add(meeting(first + i * step, first + (i + 1) * step));
        }
        return corners;
    }

    /** Cuts from point to point of the true line: for a neck, whose cloth lies outside. */
    List<Point> within(double from, double to) {
        double first = normal(from);
        double last = normal(to);
        int cuts = steps(last - first);
        double step = (last - first) / cuts;
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i <= cuts; i++) {
            corners.add(at(first + i * step));
        }
        return corners;
    }

    /** Direction of the normal where the finished circle has that radius; grows with it. */
    private double normal(double direction) {
        double turned = Math.atan2(acrossCm * Math.sin(direction), alongCm * Math.cos(direction));
        return turned + 2 * Math.PI * Math.round((direction - turned) / (2 * Math.PI));
    }

    /** A corner is rho step^2 / 8 off, with the greatest radius of curvature rho. */
    private int steps(double angle) {
        double longer = Math.max(acrossCm, alongCm);
        double shorter = Math.min(acrossCm, alongCm);
        double curvatureCm = longer * longer / shorter + outwardCm;
        return (int) Math.ceil(angle / Math.sqrt(8 * MOST_OFF_CM / curvatureCm));
    }

    /** Distance of the tangent with that normal from the centre. */
    private double support(double normal) {
        return Math.hypot(acrossCm * Math.cos(normal), alongCm * Math.sin(normal)) + outwardCm;
    }

    /** Where the tangents with two normals meet. */
    private Point meeting(double one, double other) {
        double s1 = support(one);
        double s2 = support(other);
        double sine = Math.sin(other - one);
        return new Point(
                (s1 * Math.sin(other) - s2 * Math.sin(one)) / sine, (s2 * Math.cos(one) - s1 * Math.cos(other)) / sine);
    }

    /** Point of the true line with that normal. */
    private Point at(double normal) {
        double ellipse = support(normal) - outwardCm;
        return new Point(
                (acrossCm * acrossCm / ellipse + outwardCm) * Math.cos(normal),
                (alongCm * alongCm / ellipse + outwardCm) * Math.sin(normal));
    }
}
