package campcloth.garment.design;

import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A shape of straight sides, each with an allowance of its own: the cut runs beside each side at its allowance, and two cuts
 * that follow each other meet where their lines cross. For shapes without very sharp corners.
 */
final class CutPolygon {

    private static final double STRAIGHT = 1e-9;

    private final List<Point> corners = new ArrayList<>();
    private final List<Double> allowancesCm = new ArrayList<>();

    /** The next corner, counter-clockwise, and the allowance of the side that begins there. */
    CutPolygon corner(double xCm, double yCm, double allowanceCm) {
        corners.add(new Point(xCm, yCm));
        allowancesCm.add(allowanceCm);
        return this;
    }

    /** The cut, the lower left corner of its bounding box at the origin. */
    Outline outline() {
        int size = corners.size();
        List<Point> cut = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            cut.add(meeting((i + size - 1) % size, i));
        }
        return Outline.of(cut).movedTo(0, 0);
    }

    /** Where the cut of a side meets that of the side after it, near the corner between them. */
    private Point meeting(int before, int after) {
        Point corner = corners.get(after);
        double[] one = outward(before);
        double[] other = outward(after);
        double cross = one[0] * other[1] - one[1] * other[0];
        double a = allowancesCm.get(before);
        double b = allowancesCm.get(after);
        if (Math.abs(cross) < STRAIGHT) {
            return new Point(corner.xCm() + a * one[0], corner.yCm() + a * one[1]);
        }
        return new Point(
                corner.xCm() + (a * other[1] - b * one[1]) / cross, corner.yCm() + (b * one[0] - a * other[0]) / cross);
    }

    /** Direction outwards, square to a side. */
    private double[] outward(int side) {
        Point from = corners.get(side);
        Point to = corners.get((side + 1) % corners.size());
        double length = Math.hypot(to.xCm() - from.xCm(), to.yCm() - from.yCm());
        return new double[] {(to.yCm() - from.yCm()) / length, (from.xCm() - to.xCm()) / length};
    }
}
