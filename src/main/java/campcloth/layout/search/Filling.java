package campcloth.layout.search;

/**
 * Lays items one after the other at their lowest free spots. Consecutive fillings whose orders begin alike keep what lies
 * already.
 */
final class Filling {

    /** Spots are rounded to this part of a cm, within what counts as touching. */
    private static final double ROUND = 1e9;

    private final ItemKinds kinds;
    private final Floors floors;
    private final LowestSpot spot;
    private final Lying lying;
    /** Number of things that lie there before any item. */
    private final int fixed;

    private final int[] laidItem;
    private final int[] laidWay;
    private final int[] askedWay;
    private Order.Rule rule = Order.Rule.LEAST_LOW_EDGE;
    private boolean rightmost;

    Filling(double stripWidth, ForbiddenSpots forbidden, ItemKinds kinds, Work work) {
        this.kinds = kinds;
        this.floors = new Floors(kinds.shapes(), kinds.items() + kinds.fixed().count());
        this.spot = new LowestSpot(stripWidth, forbidden, floors, work);
        this.fixed = kinds.fixed().count();
        this.lying = new Lying(kinds.items() + fixed);
        for (int i = 0; i < fixed; i++) {
            lying.add(kinds.fixed().shape(i), kinds.fixed().x(i), kinds.fixed().y(i));
        }
        this.laidItem = new int[kinds.items()];
        this.laidWay = new int[kinds.items()];
        this.askedWay = new int[kinds.items()];
    }

    /** The length that an order takes; infinite as soon as it is known to be over the limit. */
    double length(Order order, double limit) {
        lying.keepFirst(fixed + alike(order));
        floors.keepFirst(lying.count());
        rule = order.rule;
        rightmost = order.rightmost;
        double length = 0;
        for (int i = fixed; i < lying.count(); i++) {
            length = Math.max(length, lying.y(i) + lying.shape(i).height - kinds.base());
        }
        while (laid() < order.items.length && length <= limit) {
            int item = order.items[laid()];
            length = Math.max(length, lay(item, order.ways[item]) - kinds.base());
        }
        return length <= limit ? length : Double.POSITIVE_INFINITY;
    }

    /** Number of items that lie. */
    private int laid() {
        return lying.count() - fixed;
    }

    private int alike(Order order) {
        if (order.rule != rule || order.rightmost != rightmost) {
            return 0;
        }
        int alike = 0;
        while (alike < laid()
                && kinds.kind(laidItem[alike]) == kinds.kind(order.items[alike])
                && askedWay[alike] == order.ways[order.items[alike]]) {
            laidItem[alike] = order.items[alike];
            alike++;
        }
        return alike;
    }

    /** Lays one more; the height of its top edge. */
    private double lay(int item, int asked) {
        double best = Double.POSITIVE_INFINITY;
        double bestX = 0;
        double bestY = 0;
        int bestWay = 0;
        int first = asked == Order.FREE ? 0 : asked;
        int last = asked == Order.FREE ? kinds.ways(item) - 1 : asked;
        for (int way = first; way <= last; way++) {
            Shape shape = kinds.shape(item, way);
            double over = rule == Order.Rule.LEAST_TOP_EDGE ? shape.height : 0;
            if (spot.find(shape, lying, rightmost, best - over)) {
                double score = spot.y() + over;
                boolean ties = score > best - 1e-7;
                if (!ties || (rightmost ? spot.x() > bestX : spot.x() < bestX)) {
                    best = Math.min(best, score);
                    bestX = spot.x();
                    bestY = spot.y();
                    bestWay = way;
                }
            }
        }
        int at = laid();
        laidItem[at] = item;
        laidWay[at] = bestWay;
        askedWay[at] = asked;
        Shape shape = kinds.shape(item, bestWay);
        lying.add(shape, Math.rint(bestX * ROUND) / ROUND, Math.rint(bestY * ROUND) / ROUND);
        return lying.y(at + fixed) + shape.height;
    }

    /** Mean height of the laid area, in cm: tells orders of one length apart. */
    double meanHeight() {
        double moment = 0;
        double area = 0;
        for (int i = fixed; i < lying.count(); i++) {
            Shape shape = lying.shape(i);
            moment += shape.area * (lying.y(i) + shape.height / 2);
            area += shape.area;
        }
        return moment / area;
    }

    /** Where every item lies, by item. */
    StripPacking.Spot[] spots() {
        StripPacking.Spot[] spots = new StripPacking.Spot[laid()];
        for (int i = 0; i < laid(); i++) {
            int item = laidItem[i];
            spots[item] =
                    new StripPacking.Spot(kinds.givenWay(item, laidWay[i]), lying.x(i + fixed), lying.y(i + fixed));
        }
        return spots;
    }
}
