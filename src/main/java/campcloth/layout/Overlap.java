package campcloth.layout;

import java.util.List;

/**
 * The area that two outlines share. The inside of an outline is the signed sum of the strips under its edges, so the shared
 * area is the signed sum over pairs of edges of the area under both, within the box that the outlines share: exact for
 * simple polygons, convex or not, up to rounding. Shares no code and no idea with the packing engine, since it judges it.
 */
final class Overlap {

    private final double left;
    private final double low;
    private final double right;
    private final double high;

    private Overlap(Outline one, Outline other) {
        left = Math.max(one.leftCm(), other.leftCm());
        low = Math.max(one.lowCm(), other.lowCm());
        right = Math.min(one.leftCm() + one.widthCm(), other.leftCm() + other.widthCm());
        high = Math.min(one.lowCm() + one.heightCm(), other.lowCm() + other.heightCm());
    }

    static double areaCm2(Outline one, Outline other) {
        Overlap box = new Overlap(one, other);
        if (box.left >= box.right || box.low >= box.high) {
            return 0;
        }
        double area = 0;
        List<Point> ones = one.points();
        List<Point> others = other.points();
        for (int i = 0; i < ones.size(); i++) {
            Point from = ones.get(i);
            Point to = ones.get((i + 1) % ones.size());
            if (box.concerns(from, to)) {
                for (int j = 0; j < others.size(); j++) {
                    area += box.underBoth(from, to, others.get(j), others.get((j + 1) % others.size()));
                }
            }
        }
        return area;
    }

    private boolean concerns(Point from, Point to) {
        return Math.max(from.xCm(), to.xCm()) > left
                && Math.min(from.xCm(), to.xCm()) < right
                && Math.max(from.yCm(), to.yCm()) > low;
    }

    /** Area below both edges and within the box, positive where the edges run the same way. */
    private double underBoth(Point a, Point b, Point c, Point d) {
        double from = Math.max(left, Math.max(Math.min(a.xCm(), b.xCm()), Math.min(c.xCm(), d.xCm())));
        double to = Math.min(right, Math.min(Math.max(a.xCm(), b.xCm()), Math.max(c.xCm(), d.xCm())));
        if (from >= to) {
            return 0;
        }
        double sign = Math.signum(b.xCm() - a.xCm()) * Math.signum(d.xCm() - c.xCm());
        double crossing = crossing(a, b, c, d, from, to);
        return sign * (underLower(a, b, c, d, from, crossing) + underLower(a, b, c, d, crossing, to));
    }

    /** Where two edges cross between two x; the first x where they do not. */
    private static double crossing(Point a, Point b, Point c, Point d, double from, double to) {
        double atFrom = heightAt(a, b, from) - heightAt(c, d, from);
        double atTo = heightAt(a, b, to) - heightAt(c, d, to);
        return atFrom * atTo < 0 ? from + (to - from) * atFrom / (atFrom - atTo) : from;
    }

    /** Area between two x under the lower of two edges that do not cross between them. */
    private double underLower(Point a, Point b, Point c, Point d, double from, double to) {
        double middle = (from + to) / 2;
        boolean first = heightAt(a, b, middle) <= heightAt(c, d, middle);
        double atFrom = first ? heightAt(a, b, from) : heightAt(c, d, from);
        double atTo = first ? heightAt(a, b, to) : heightAt(c, d, to);
        return areaUpTo(atFrom, atTo, to - from, high) - areaUpTo(atFrom, atTo, to - from, low);
    }

    /** Area under a straight line of which nothing above a level counts. */
    private static double areaUpTo(double atFrom, double atTo, double width, double level) {
        double fromDepth = level - atFrom;
        double toDepth = level - atTo;
        if (fromDepth >= 0 && toDepth >= 0) {
            return -width * (fromDepth + toDepth) / 2;
        }
        if (fromDepth <= 0 && toDepth <= 0) {
            return 0;
        }
        double below = Math.max(fromDepth, toDepth);
        return -width * below * below / Math.abs(fromDepth - toDepth) / 2;
    }

    private static double heightAt(Point from, Point to, double x) {
        double part = (x - from.xCm()) / (to.xCm() - from.xCm());
        return from.yCm() + Math.min(1, Math.max(0, part)) * (to.yCm() - from.yCm());
    }
}
