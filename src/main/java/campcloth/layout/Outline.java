package campcloth.layout;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The closed outline of a piece (a simple polygon): the last point joins the first, no edge meets another except its
 * neighbours at their common point, the area is not zero. May be concave. Kept counter-clockwise whichever way it was given;
 * repeated points are dropped. Area by the shoelace formula.
 *
 * <p>Coordinates in cm, up to 100 000 either side of zero; at least 0.0001 cm2; at most 10 000 points.
 */
public final class Outline {

    private static final int MOST_POINTS = 10_000;
    private static final double FARTHEST_CM = 100_000;
    private static final double LEAST_AREA_CM2 = 1e-4;
    private static final String FIELD = "outlineCm";

    private final List<Point> points;
    private final double leftCm;
    private final double lowCm;
    private final double widthCm;
    private final double heightCm;

    private Outline(List<Point> points) {
        this.points = List.copyOf(points);
        this.leftCm = points.stream().mapToDouble(Point::xCm).min().orElseThrow();
        this.lowCm = points.stream().mapToDouble(Point::yCm).min().orElseThrow();
        this.widthCm = points.stream().mapToDouble(Point::xCm).max().orElseThrow() - leftCm;
        this.heightCm = points.stream().mapToDouble(Point::yCm).max().orElseThrow() - lowCm;
    }

    /** The outline through the points given, or a refusal with the field {@code outlineCm}. */
    public static Outline of(List<Point> given) {
        checkPoints(given);
        List<Point> corners = withoutRepeats(given);
        if (corners.size() < 3) {
            throw Refused.of(FIELD, "has " + corners.size() + " different points", "give at least three corners");
        }
        Optional<String> crossing = SelfCrossing.of(corners);
        if (crossing.isPresent()) {
            throw Refused.of(FIELD, crossing.get(), "list the corners in the order in which one walks round the piece");
        }
        double area = signedAreaCm2(corners);
        if (Math.abs(area) < LEAST_AREA_CM2) {
            throw Refused.of(FIELD, "encloses no area", "give corners that do not lie on one line");
        }
        if (area < 0) {
            Collections.reverse(corners);
        }
        return new Outline(corners);
    }

    /** A rectangle with one corner at the origin. */
    public static Outline rectangle(double widthCm, double heightCm) {
        return of(
                List.of(new Point(0, 0), new Point(widthCm, 0), new Point(widthCm, heightCm), new Point(0, heightCm)));
    }

    private static void checkPoints(List<Point> given) {
        if (given.size() > MOST_POINTS) {
            throw Refused.of(FIELD, "has " + given.size() + " points", "give at most " + MOST_POINTS);
        }
        for (int i = 0; i < given.size(); i++) {
            Point point = given.get(i);
            if (!(Math.abs(point.xCm()) <= FARTHEST_CM && Math.abs(point.yCm()) <= FARTHEST_CM)) {
                throw Refused.of(
                        FIELD + "[" + i + "]",
                        "is " + Words.number(point.xCm()) + ", " + Words.number(point.yCm()),
                        "give finite numbers from -100000 to 100000 cm");
            }
        }
    }

    private static List<Point> withoutRepeats(List<Point> given) {
        List<Point> corners = new ArrayList<>();
        for (Point point : given) {
            Point plain = new Point(point.xCm() + 0.0, point.yCm() + 0.0);
            if (corners.isEmpty() || !corners.get(corners.size() - 1).equals(plain)) {
                corners.add(plain);
            }
        }
        while (corners.size() > 1 && corners.get(0).equals(corners.get(corners.size() - 1))) {
            corners.remove(corners.size() - 1);
        }
        return corners;
    }

    private static double signedAreaCm2(List<Point> corners) {
        Point first = corners.get(0);
        double twice = 0;
        for (int i = 1; i + 1 < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get(i + 1);
            twice += (a.xCm() - first.xCm()) * (b.yCm() - first.yCm())
                    - (b.xCm() - first.xCm()) * (a.yCm() - first.yCm());
        }
        return twice / 2;
    }

    /** Corners, counter-clockwise. */
    public List<Point> points() {
        return points;
    }

    public double areaCm2() {
        return signedAreaCm2(points);
    }

    /** Area that it shares with another outline; 0 where they only touch. */
    public double sharedAreaCm2(Outline other) {
        return Math.max(0, Overlap.areaCm2(this, other));
    }

    /** Left edge of the bounding box. */
    public double leftCm() {
        return leftCm;
    }

    /** Lower edge of the bounding box. */
    public double lowCm() {
        return lowCm;
    }

    /** Extent across the cloth. */
    public double widthCm() {
        return widthCm;
    }

    /** Extent along the cloth. */
    public double heightCm() {
        return heightCm;
    }

    /** The lowest spot of it halfway across. */
    public Point lowestInTheMiddle() {
        double x = leftCm() + widthCm() / 2;
        double low = lowCm() + heightCm();
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            if (Math.min(a.xCm(), b.xCm()) <= x && x <= Math.max(a.xCm(), b.xCm())) {
                double y = a.xCm() == b.xCm()
                        ? Math.min(a.yCm(), b.yCm())
                        : a.yCm() + (x - a.xCm()) / (b.xCm() - a.xCm()) * (b.yCm() - a.yCm());
                low = Math.min(low, y);
            }
        }
        return new Point(x, low);
    }

    /** The same outline with the lower left corner of its bounding box at the point given. */
    public Outline movedTo(double xCm, double yCm) {
        return new Outline(points.stream()
                .map(p -> new Point(p.xCm() - leftCm + xCm, p.yCm() - lowCm + yCm))
                .toList());
    }

    /** Turned by 180 degrees within its bounding box. */
    public Outline turned() {
        return new Outline(points.stream()
                .map(p -> new Point(2 * leftCm + widthCm - p.xCm(), 2 * lowCm + heightCm - p.yCm()))
                .toList());
    }

    /** Mirrored across its lengthwise axis within its bounding box. */
    public Outline mirrored() {
        List<Point> mirrored = new ArrayList<>(points.stream()
                .map(p -> new Point(2 * leftCm + widthCm - p.xCm(), p.yCm()))
                .toList());
        Collections.reverse(mirrored);
        return new Outline(mirrored);
    }

    /** As it lies: turned and mirrored where stated, the lower left corner of its bounding box at the point given. */
    public Outline lying(boolean turned, boolean mirrored, double xCm, double yCm) {
        Outline outline = turned ? turned() : this;
        return (mirrored ? outline.mirrored() : outline).movedTo(xCm, yCm);
    }

    /** Whether a point lies within, or no farther from the outline than a distance. */
    boolean reaches(Point point, double withinCm) {
        boolean inside = false;
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            double dx = b.xCm() - a.xCm();
            double dy = b.yCm() - a.yCm();
            double px = point.xCm() - a.xCm();
            double py = point.yCm() - a.yCm();
            double part = Math.max(0, Math.min(1, (px * dx + py * dy) / (dx * dx + dy * dy)));
            if (Math.hypot(px - part * dx, py - part * dy) <= withinCm) {
                return true;
            }
            if (a.yCm() <= point.yCm() != b.yCm() <= point.yCm() && px < py / dy * dx) {
                inside = !inside;
            }
        }
        return inside;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline outline && outline.points.equals(points);
    }

    @Override
    public int hashCode() {
        return points.hashCode();
    }

    @Override
    public String toString() {
        return "Outline" + points;
    }
}
