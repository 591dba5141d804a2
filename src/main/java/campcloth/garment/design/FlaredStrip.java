package campcloth.garment.design;

import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A panel that is symmetrical about its grain and gets wider or narrower downwards: a gore, a panel of a skirt. Its sides are
 * straight from one level to the next; the cut runs beside them at the seam's allowance, measured square to the side, and
 * straight up and down through the allowances at top and hem.
 *
 * @param levels from the finished hem upwards, as cut but without allowances: x half the width, y the height above the hem
 */
record FlaredStrip(List<Point> levels) {

    private static final double STRAIGHT = 1e-9;

    FlaredStrip {
        levels = List.copyOf(levels);
    }

    /** With straight sides from the hem to the top. */
    static FlaredStrip between(double hemWidthCm, double topWidthCm, double heightCm) {
        return new FlaredStrip(List.of(new Point(hemWidthCm / 2, 0), new Point(topWidthCm / 2, heightCm)));
    }

    /** The outline with its allowances, the lower left corner of the bounding box at the origin. */
    Outline outline(double seamCm, double topCm, double hemCm) {
        List<Point> right = new ArrayList<>();
        Point hem = beside(0, seamCm);
        add(right, new Point(hem.xCm(), -hemCm));
        add(right, hem);
        for (int i = 1; i < levels.size(); i++) {
            add(right, beside(i, seamCm));
        }
        Point top = right.get(right.size() - 1);
        add(right, new Point(top.xCm(), top.yCm() + topCm));
        List<Point> corners = new ArrayList<>(withoutFlat(right));
        for (int i = right.size() - 1; i >= 0; i--) {
            Point point = right.get(i);
            if (corners.contains(point)) {
                corners.add(new Point(-point.xCm(), point.yCm()));
            }
        }
        return Outline.of(corners).movedTo(0, 0);
    }

    /** The cut beside a level: where the cuts of the two sides that meet there cross. */
    private Point beside(int level, double seamCm) {
        double y = levels.get(level).yCm();
        if (level == 0 || level == levels.size() - 1) {
            int side = level == 0 ? 0 : level - 1;
            return new Point(levels.get(level).xCm() + seamCm * widening(side), y);
        }
        double below = run(level - 1);
        double above = run(level);
        double dBelow = seamCm * widening(level - 1);
        double dAbove = seamCm * widening(level);
        double up = Math.abs(below - above) < STRAIGHT ? 0 : (dAbove - dBelow) / (below - above);
        return new Point(levels.get(level).xCm() + dBelow + below * up, y + up);
    }

    /** How much x grows a centimetre upwards on the side above a level. */
    private double run(int side) {
        Point low = levels.get(side);
        Point high = levels.get(side + 1);
        return (high.xCm() - low.xCm()) / (high.yCm() - low.yCm());
    }

    /** Distance across the grain for one square to the side. */
    private double widening(int side) {
        return Math.hypot(1, run(side));
    }

    private static void add(List<Point> corners, Point point) {
        if (corners.isEmpty() || !corners.get(corners.size() - 1).equals(point)) {
            corners.add(point);
        }
    }

    private static List<Point> withoutFlat(List<Point> side) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < side.size(); i++) {
            boolean inner = i > 0 && i < side.size() - 1;
            double x = side.get(i).xCm();
            if (!inner
                    || Math.abs(side.get(i - 1).xCm() - x) > STRAIGHT
                    || Math.abs(side.get(i + 1).xCm() - x) > STRAIGHT) {
                kept.add(side.get(i));
            }
        }
        return kept;
    }

    /** Length of one finished side. */
    double sideCm() {
        double length = 0;
        for (int i = 1; i < levels.size(); i++) {
            Point low = levels.get(i - 1);
            Point high = levels.get(i);
            length += Math.hypot(high.xCm() - low.xCm(), high.yCm() - low.yCm());
        }
        return length;
    }

    double areaCm2() {
        double area = 0;
        for (int i = 1; i < levels.size(); i++) {
            Point low = levels.get(i - 1);
            Point high = levels.get(i);
            area += (low.xCm() + high.xCm()) * (high.yCm() - low.yCm());
        }
        return area;
    }

    /** Tangent of the angle between the side and the grain at the hem. */
    double hemTangent() {
        return Math.max(0, -run(0));
    }
}
