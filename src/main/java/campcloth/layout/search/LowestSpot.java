package campcloth.layout.search;

/**
 * The lowest free spot of a shape among those that lie already (bottom-left fill over exact no-fit polygons): of all spots
 * on the strip outside every open no-fit polygon the one with the least y, of several the leftmost (or rightmost). Such a
 * spot lies on the edge of the strip or of a no-fit polygon; each of these edges is climbed from its lower end, leaving each
 * part that covers the spot where its edge comes out, until it is free or no better than the best. Holes are found, too,
 * also such that the shape fits exactly.
 */
final class LowestSpot {

    /** Heights closer than this, in cm, count as equal. */
    private static final double TIE = 1e-8;

    /** Steps in cm shorter than this are run along only from the lowest spot on that a free shape would have. */
    private static final double SHORT_STEP = 4;

    private final double stripWidth;
    private final ForbiddenSpots forbidden;
    private final Work work;

    private final Floors floors;
    private Forbidden[] near = new Forbidden[0];
    private double[] nearX = new double[0];
    private double[] nearY = new double[0];
    /** Absolute boxes of the no-fit polygons, four numbers each: left, right, low, high. */
    private double[] boxes = new double[0];

    private int count;
    private int last;
    private double room;
    private double floor;
    private boolean rightmost;
    private double bestX;
    private double bestY;

    LowestSpot(double stripWidth, ForbiddenSpots forbidden, Floors floors, Work work) {
        this.stripWidth = stripWidth;
        this.forbidden = forbidden;
        this.floors = floors;
        this.work = work;
    }

    double x() {
        return bestX;
    }

    double y() {
        return bestY;
    }

    /** Looks for the spot; nothing above {@code limit} is of interest. Whether one was found. */
    boolean find(Shape shape, Lying lying, boolean towardsRight, double limit) {
        room = Math.max(0, stripWidth - shape.width);
        rightmost = towardsRight;
        bestX = towardsRight ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        bestY = limit;
        floor = floors.of(shape, lying.count());
        double top = gather(shape, lying);
        if (shape.held.isFree()) {
            climbAll(top);
        } else if (shape.held.stepY() > 0 && shape.held.stepY() < SHORT_STEP) {
            climbAll(top);
            floor = Math.max(floor, bestY - 2 * TIE);
            boolean found = Double.isFinite(bestX);
            bestX = towardsRight ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
            bestY = limit;
            if (found) {
                tryLevels(shape.held, Math.max(top, floor));
            }
        } else if (shape.held.stepY() > 0) {
            tryLevels(shape.held, top);
        } else {
            climbColumns(shape.held, top);
        }
        floors.raise(shape, lying.count(), bestY - 2 * TIE);
        return Double.isFinite(bestX);
    }

    private void climbAll(double top) {
        if (floor <= 0) {
            climb(rightmost ? room : 0, 0, rightmost ? 0 : room, 0);
        }
        climb(0, floor, 0, top);
        climb(room, floor, room, top);
        for (int i = 0; i < count; i++) {
            if (boxes[4 * i + 2] <= bestY + TIE) {
                climbEdges(near[i], nearX[i], nearY[i]);
            }
        }
    }

    /** Runs along the heights to which a shape is held, the lowest first, until one has a free spot. */
    private void tryLevels(Held held, double top) {
        double number = Held.numberFrom(held.stepY(), held.phaseY(), floor);
        double y = floor;
        while (!Double.isFinite(bestX) && y <= top && held.fitsAcross(room)) {
            y = Math.max(floor, held.phaseY() + number++ * held.stepY());
            if (y > bestY + TIE) {
                return;
            }
            if (held.stepX() > 0) {
                tryColumns(held, y);
            } else {
                climb(rightmost ? room : 0, y, rightmost ? 0 : room, y);
            }
        }
    }

    /** The first free one of the places across, at one height. */
    private void tryColumns(Held held, double y) {
        double first = Held.numberFrom(held.stepX(), held.phaseX(), 0);
        double end = Held.numberUpTo(held.stepX(), held.phaseX(), room);
        double number = rightmost ? end : first;
        double way = rightmost ? -1 : 1;
        while (number >= first && number <= end) {
            double x = Math.min(room, Math.max(0, held.phaseX() + number * held.stepX()));
            double exit = exit(x, y, x, y, way, 0);
            if (exit < 0) {
                bestX = x;
                bestY = y;
                return;
            }
            double next = x + way * exit;
            number = rightmost
                    ? Math.min(number - 1, Held.numberUpTo(held.stepX(), held.phaseX(), next))
                    : Math.max(number + 1, Held.numberFrom(held.stepX(), held.phaseX(), next));
        }
    }

    /** Climbs straight up at each of the places across. */
    private void climbColumns(Held held, double top) {
        double first = Held.numberFrom(held.stepX(), held.phaseX(), 0);
        double end = Held.numberUpTo(held.stepX(), held.phaseX(), room);
        for (double number = first; number <= end; number++) {
            double x = Math.min(room, Math.max(0, held.phaseX() + number * held.stepX()));
            climb(x, floor, x, top);
        }
    }

    /** Collects the no-fit polygons that reach the part of the strip that matters; their highest top. */
    private double gather(Shape shape, Lying lying) {
        if (near.length < lying.count()) {
            near = new Forbidden[lying.count() + 32];
            nearX = new double[near.length];
            nearY = new double[near.length];
            boxes = new double[4 * near.length];
        }
        count = 0;
        last = 0;
        double top = floor;
        for (int i = 0; i < lying.count(); i++) {
            Forbidden polygon = forbidden.of(lying.shape(i), shape);
            double x = lying.x(i);
            double y = lying.y(i);
            if (y + polygon.high >= floor && x + polygon.left <= room && x + polygon.right >= 0) {
                near[count] = polygon;
                nearX[count] = x;
                nearY[count] = y;
                boxes[4 * count] = x + polygon.left;
                boxes[4 * count + 1] = x + polygon.right;
                boxes[4 * count + 2] = y + polygon.low;
                boxes[4 * count++ + 3] = y + polygon.high;
                top = Math.max(top, y + polygon.high);
            }
        }
        work.spend(2L * lying.count());
        return top;
    }

    private void climbEdges(Forbidden polygon, double atX, double atY) {
        double[] edges = polygon.edges;
        for (int e = 0; e < edges.length; e += 4) {
            double fromY = edges[e + 1] + atY;
            if (fromY <= bestY + TIE && edges[e + 3] + atY >= floor) {
                climbWithin(edges[e] + atX, fromY, edges[e + 2] + atX, edges[e + 3] + atY);
            }
        }
        work.spend(edges.length / 4);
    }

    /** Climbs what lies on the strip, at or above the floor, of an edge that rises. */
    private void climbWithin(double fromX, double fromY, double toX, double toY) {
        double stepX = toX - fromX;
        double stepY = toY - fromY;
        double from = 0;
        double to = 1;
        if (stepX != 0) {
            double atLeft = -fromX / stepX;
            double atRight = (room - fromX) / stepX;
            from = Math.max(from, Math.min(atLeft, atRight));
            to = Math.min(to, Math.max(atLeft, atRight));
        } else if (fromX < 0 || fromX > room) {
            return;
        }
        if (fromY < floor) {
            from = Math.max(from, (floor - fromY) / stepY);
        }
        if (from <= to) {
            boolean backwards = stepY == 0 && rightmost;
            double low = backwards ? to : from;
            double high = backwards ? from : to;
            climb(fromX + low * stepX, fromY + low * stepY, fromX + high * stepX, fromY + high * stepY);
        }
    }

    private void climb(double fromX, double fromY, double toX, double toY) {
        double stepX = toX - fromX;
        double stepY = toY - fromY;
        double t = 0;
        while (t <= 1) {
            double x = Math.min(room, Math.max(0, fromX + t * stepX));
            double y = Math.max(floor, fromY + t * stepY);
            if (!isBetter(x, y)) {
                return;
            }
            double exit = exit(x, y, fromX, fromY, stepX, stepY);
            if (exit < 0) {
                bestX = x;
                bestY = y;
                return;
            }
            t = Math.max(exit, Math.nextUp(t));
        }
    }

    private boolean isBetter(double x, double y) {
        return y < bestY - TIE || y <= bestY + TIE && (rightmost ? x > bestX : x < bestX);
    }

    /** Where an edge leaves a part that covers a spot on it; negative where the spot is free. */
    private double exit(double x, double y, double fromX, double fromY, double stepX, double stepY) {
        work.spend(4);
        if (last < count) {
            double exit = exitOf(last, x, y, fromX, fromY, stepX, stepY);
            if (exit >= 0) {
                return exit;
            }
        }
        for (int i = 0; i < count; i++) {
            double exit = exitOf(i, x, y, fromX, fromY, stepX, stepY);
            if (exit >= 0) {
                last = i;
                work.spend(i);
                return exit;
            }
        }
        work.spend(count);
        return -1;
    }

    private double exitOf(int i, double x, double y, double fromX, double fromY, double stepX, double stepY) {
        if (x > boxes[4 * i] && x < boxes[4 * i + 1] && y > boxes[4 * i + 2] && y < boxes[4 * i + 3]) {
            work.spend(4L * near[i].parts.length);
            for (HalfPlanes part : near[i].parts) {
                if (part.contains(x - nearX[i], y - nearY[i])) {
                    return part.exit(fromX - nearX[i], fromY - nearY[i], stepX, stepY);
                }
            }
        }
        return -1;
    }
}
