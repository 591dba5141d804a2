package campcloth.layout.drawing;

import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one has to measure to chalk a shape: its corners, and for each rounded part its centre and radius or a few points on
 * the way. A rounded part is a run of at least {@value #LEAST_RUN} points at each of which the line bends the same way by
 * less than {@value #SMOOTH_DEGREES} degrees (project choice). A centre counts only where it lies on the cloth.
 *
 * @param corners points to measure
 * @param arcs rounded parts that follow a circle
 */
record Marks(List<Point> corners, List<Arc> arcs) {

    private static final int LEAST_RUN = 4;
    private static final double SMOOTH_DEGREES = 20;
    private static final double STRAIGHT_DEGREES = 1e-4;
    private static final int ON_THE_WAY = 4;

    Marks {
        corners = List.copyOf(corners);
        arcs = List.copyOf(arcs);
    }

    static Marks of(Shape shape, Clip sheet) {
        Shape bent = withoutStraight(shape);
        List<Point> corners = new ArrayList<>();
        List<Arc> arcs = new ArrayList<>();
        int size = bent.points().size();
        int start = firstOfARun(bent);
        int done = 0;
        while (done < size) {
            int run = Math.min(run(bent, start + done), size - done);
            if (run < LEAST_RUN) {
                corners.add(bent.at(start + done));
                done++;
            } else {
                addRounded(bent, start + done, run, sheet, corners, arcs);
                done += run;
            }
        }
        return new Marks(corners, arcs);
    }

    private static void addRounded(Shape shape, int from, int run, Clip sheet, List<Point> corners, List<Arc> arcs) {
        List<Point> points = new ArrayList<>();
        for (int i = from; i < from + run; i++) {
            points.add(shape.at(i));
        }
        Optional<Arc> arc = Arc.through(points).filter(a -> sheet.holds(a.centre()));
        arc.ifPresentOrElse(arcs::add, () -> {
            for (int part = 1; part < ON_THE_WAY; part++) {
                corners.add(points.get(part * (run - 1) / ON_THE_WAY));
            }
        });
        if (run < shape.points().size()) {
            addEnd(arc, shape.at(from - 1), points.get(0), corners);
            addEnd(arc, shape.at(from + run), points.get(run - 1), corners);
        }
    }

    /** Where a rounded part ends, unless its circle goes on to the next corner. */
    private static void addEnd(Optional<Arc> arc, Point next, Point end, List<Point> corners) {
        if (arc.filter(a -> a.passes(next)).isEmpty()) {
            corners.add(end);
        }
    }

    private static Shape withoutStraight(Shape shape) {
        List<Point> bent = new ArrayList<>();
        for (int i = 0; i < shape.points().size(); i++) {
            if (Math.abs(turn(shape, i)) > STRAIGHT_DEGREES) {
                bent.add(shape.at(i));
            }
        }
        return bent.size() < 3 ? shape : new Shape(bent);
    }

    private static int firstOfARun(Shape shape) {
        for (int i = 0; i < shape.points().size(); i++) {
            if (!goesOn(shape, i - 1)) {
                return i;
            }
        }
        return 0;
    }

    private static int run(Shape shape, int from) {
        if (!isSmooth(shape, from)) {
            return 1;
        }
        int run = 1;
        while (run < shape.points().size() && goesOn(shape, from + run - 1)) {
            run++;
        }
        return run;
    }

    private static boolean goesOn(Shape shape, int at) {
        return isSmooth(shape, at) && isSmooth(shape, at + 1) && turn(shape, at) * turn(shape, at + 1) > 0;
    }

    private static boolean isSmooth(Shape shape, int at) {
        return Math.abs(turn(shape, at)) < SMOOTH_DEGREES;
    }

    private static double turn(Shape shape, int at) {
        Point a = shape.at(at - 1);
        Point b = shape.at(at);
        Point c = shape.at(at + 1);
        double inX = b.xCm() - a.xCm();
        double inY = b.yCm() - a.yCm();
        double outX = c.xCm() - b.xCm();
        double outY = c.yCm() - b.yCm();
        return Math.toDegrees(Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY));
    }
}
