package campcloth.garment.design;

import campcloth.garment.SewnCloth;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A sector as it is cut, with its allowances. Cloth that was not washed before: the sector is cut larger by the residual
 * shrinkage, across and along each by its own.
 *
 * @param sector as it is sewn
 * @param cloth what it is cut from
 * @param hemCm allowance beyond the hem
 * @param neckCm allowance inside the neck
 * @param edgeCm allowance beyond each straight edge
 */
record CutSector(CircleSector sector, SewnCloth cloth, double hemCm, double neckCm, double edgeCm) {

    /** How far the arcs are drawn on before the straight edges cut them off. */
    private static final double BEYOND = Math.toRadians(85);

    /** The corners of the cut, counter-clockwise, the centre at the origin. */
    List<Point> corners() {
        double from = sector.from() - BEYOND;
        double to = sector.to() + BEYOND;
        List<Point> corners = cutOff(arc(sector.outerCm(), hemCm).around(from, to));
        List<Point> neck = cutOff(arc(sector.innerCm(), -neckCm).within(from, to));
        Collections.reverse(neck);
        corners.addAll(neck);
        return corners;
    }

    private CutArc arc(double radiusCm, double outwardCm) {
        return new CutArc(cloth.acrossCm(radiusCm), cloth.alongCm(radiusCm), outwardCm);
    }

    private List<Point> cutOff(List<Point> arc) {
        List<Point> rest = fromEdgeOn(arc, sector.from(), -1);
        Collections.reverse(rest);
        List<Point> between = fromEdgeOn(rest, sector.to(), 1);
        Collections.reverse(between);
        return between;
    }

    /** Leaves out what lies before an edge's cut; {@code side} is -1 for the first edge, 1 for the last. */
    private List<Point> fromEdgeOn(List<Point> arc, double direction, int side) {
        double dx = cloth.acrossCm(Math.cos(direction));
        double dy = cloth.alongCm(Math.sin(direction));
        double length = Math.hypot(dx, dy);
        double outX = -side * dy / length;
        double outY = side * dx / length;
        int next = 0;
        while (next < arc.size() && beyondCm(arc.get(next), outX, outY) > 0) {
            next++;
        }
        if (next == 0 || next == arc.size()) {
            throw new IllegalStateException("the straight edge does not cut the arc");
        }
        Point before = arc.get(next - 1);
        Point after = arc.get(next);
        double share = beyondCm(before, outX, outY) / (beyondCm(before, outX, outY) - beyondCm(after, outX, outY));
        List<Point> rest = new ArrayList<>();
        rest.add(new Point(
                before.xCm() + share * (after.xCm() - before.xCm()),
                before.yCm() + share * (after.yCm() - before.yCm())));
        rest.addAll(arc.subList(next, arc.size()));
        return rest;
    }

    private double beyondCm(Point point, double outX, double outY) {
        return point.xCm() * outX + point.yCm() * outY - edgeCm;
    }
}
