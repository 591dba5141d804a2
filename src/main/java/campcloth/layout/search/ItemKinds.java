package campcloth.layout.search;

import java.util.ArrayList;
import java.util.List;

/**
 * The items to lay as shapes: equal shapes are one, whatever piece they come from, and items of the same shapes are of one
 * kind. Outlines with many corners are replaced by covers, the coarser the more kinds there are.
 */
final class ItemKinds {

    private static final double SAME_CM = 1e-9;
    private static final int MOST_CORNERS = 96;
    private static final int MOST_DENTS = 16;
    private static final int ALL_CORNERS = 2400;
    /** Most pairs of parts, of a shape with itself, in all; their number squared is what no-fit polygons cost. */
    private static final double ALL_PART_PAIRS = 1700;

    private final List<Shape> shapes = new ArrayList<>();
    /** By item, by way. */
    private final Shape[][] shapeOfWay;
    /** By item: index of the way in the item as it was given. */
    private final int[][] givenWay;

    private final int[] kind;

    private final Lying fixed;
    private final double base;

    ItemKinds(List<StripPacking.Item> items) {
        this(items, new StripPacking.Ground(0, 0, 0, List.of()));
    }

    ItemKinds(List<StripPacking.Item> items, StripPacking.Ground ground) {
        shapeOfWay = new Shape[items.size()][];
        givenWay = new int[items.size()][];
        kind = new int[items.size()];
        double different =
                items.stream().distinct().mapToInt(item -> item.ways().size()).sum();
        int corners = (int) Math.max(12, Math.min(MOST_CORNERS, ALL_CORNERS / different));
        int dents = (int) Math.max(2, Math.min(MOST_DENTS, Math.sqrt(ALL_PART_PAIRS / different) - 1));
        for (int item = 0; item < items.size(); item++) {
            int same = items.indexOf(items.get(item));
            if (same < item) {
                shapeOfWay[item] = shapeOfWay[same];
                givenWay[item] = givenWay[same];
            } else {
                readWays(item, items.get(item), corners, dents);
            }
            kind[item] = kindOf(item);
        }
        base = ground.base();
        fixed = new Lying(ground.fixed().size());
        ground.fixed().forEach(some -> fixed.add(fixedShape(some.ring()), some.ring().left, some.ring().low));
    }

    private Shape fixedShape(Ring ring) {
        Shape fresh = new Shape(shapes.size(), ring.atOrigin(), ring.atOrigin(), Held.FREE);
        shapes.add(fresh);
        return fresh;
    }

    /** What lies there before any item. */
    Lying fixed() {
        return fixed;
    }

    /** Height in cm from which length counts. */
    double base() {
        return base;
    }

    private void readWays(int item, StripPacking.Item given, int corners, int dents) {
        List<Shape> different = new ArrayList<>();
        List<Integer> ways = new ArrayList<>();
        for (int way = 0; way < given.ways().size(); way++) {
            Shape shape = shapeOf(given.ways().get(way), given.held().get(way), corners, dents);
            if (!different.contains(shape)) {
                different.add(shape);
                ways.add(way);
            }
        }
        shapeOfWay[item] = different.toArray(Shape[]::new);
        givenWay[item] = ways.stream().mapToInt(Integer::intValue).toArray();
    }

    private Shape shapeOf(Ring ring, Held held, int corners, int dents) {
        for (Shape known : shapes) {
            if (known.held.matches(held, SAME_CM) && known.ring.matches(ring, SAME_CM)) {
                return known;
            }
        }
        Shape fresh = new Shape(shapes.size(), ring, Cover.of(ring.withoutFlatCorners(), corners, dents), held);
        shapes.add(fresh);
        return fresh;
    }

    private int kindOf(int item) {
        for (int earlier = 0; earlier < item; earlier++) {
            if (java.util.Arrays.equals(shapeOfWay[earlier], shapeOfWay[item])) {
                return kind[earlier];
            }
        }
        return item;
    }

    int items() {
        return kind.length;
    }

    int shapes() {
        return shapes.size();
    }

    /** The same for items that lie the same ways. */
    int kind(int item) {
        return kind[item];
    }

    /** Number of different ways an item may lie. */
    int ways(int item) {
        return shapeOfWay[item].length;
    }

    Shape shape(int item, int way) {
        return shapeOfWay[item][way];
    }

    int givenWay(int item, int way) {
        return givenWay[item][way];
    }

    /** The way that stands for a way as it was given. */
    int wayOfGiven(int item, int given) {
        for (int way = 0; way < givenWay[item].length; way++) {
            if (givenWay[item][way] == given) {
                return way;
            }
        }
        throw new IllegalArgumentException("way " + given + " of item " + item + " is not among the different ones");
    }
}
