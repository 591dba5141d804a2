package campcloth.garment.design;

/**
 * A sector of a ring as it is sewn: a cloak, a wedge of one, a round facing. The centre is at the origin, the grain along y,
 * the neck upwards; no wider than a half circle. The radius of the ring's hole follows from its edge: r = edge / angle.
 *
 * @param innerCm radius of the hole
 * @param outerCm radius of the hem
 * @param from direction of the first straight edge, radians counter-clockwise from the x axis
 * @param angle between the straight edges, radians
 */
record CircleSector(double innerCm, double outerCm, double from, double angle) {

    private static final double DOWN = -Math.PI / 2;
    private static final double ROUNDING = 1e-9;

    CircleSector {
        if (!(innerCm > 0 && outerCm > innerCm && angle > 0 && angle <= Math.PI + ROUNDING)) {
            throw new IllegalArgumentException("no sector: " + innerCm + ", " + outerCm + ", " + angle);
        }
    }

    /** With its first edge along the grain, hanging down from the neck, the rest to the right of it. */
    static CircleSector edgeOnGrain(double innerCm, double outerCm, double angle) {
        return new CircleSector(innerCm, outerCm, DOWN, angle);
    }

    /** With its middle along the grain. */
    static CircleSector middleOnGrain(double innerCm, double outerCm, double angle) {
        return new CircleSector(innerCm, outerCm, DOWN - angle / 2, angle);
    }

    double to() {
        return from + angle;
    }

    double lengthCm() {
        return outerCm - innerCm;
    }

    double innerArcCm() {
        return innerCm * angle;
    }

    double outerArcCm() {
        return outerCm * angle;
    }

    double areaCm2() {
        return angle / 2 * (outerCm * outerCm - innerCm * innerCm);
    }

    /** Extent along the grain. */
    double heightCm() {
        double top = Math.sin(to());
        return outerCm + top * (top > 0 ? outerCm : innerCm);
    }

    /** Length of the line along the grain at so much beside the centre that lies within the sector. */
    double sectionCm(double xCm) {
        if (Math.abs(xCm) >= outerCm || isBeside(xCm, from, 1) || isBeside(xCm, to(), -1)) {
            return 0;
        }
        double half = Math.sqrt(outerCm * outerCm - xCm * xCm);
        double low = Math.max(-half, Math.max(lowest(xCm, from, 1), lowest(xCm, to(), -1)));
        double high = Math.min(half, Math.min(highest(xCm, from, 1), highest(xCm, to(), -1)));
        if (high <= low) {
            return 0;
        }
        double hole = Math.abs(xCm) < innerCm ? Math.sqrt(innerCm * innerCm - xCm * xCm) : 0;
        return high - low - Math.max(0, Math.min(high, hole) - Math.max(low, -hole));
    }

    /** Whether x lies on the outer side of an edge along the grain. */
    private static boolean isBeside(double xCm, double direction, int side) {
        return Math.abs(Math.cos(direction)) <= ROUNDING && -side * Math.sin(direction) * xCm < 0;
    }

    /** Lowest y at x on the inner side of an edge; {@code side} is 1 for the first edge, -1 for the last. */
    private static double lowest(double xCm, double direction, int side) {
        double run = side * Math.cos(direction);
        return run > ROUNDING ? xCm * Math.tan(direction) : Double.NEGATIVE_INFINITY;
    }

    private static double highest(double xCm, double direction, int side) {
        double run = side * Math.cos(direction);
        return run < -ROUNDING ? xCm * Math.tan(direction) : Double.POSITIVE_INFINITY;
    }
}
