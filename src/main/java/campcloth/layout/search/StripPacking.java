package campcloth.layout.search;

import java.util.List;

/**
 * Packing of shapes on a strip, the face of the engine towards its room: what goes in and comes out is rings and spots, so
 * that another engine can stand in its place.
 */
public final class StripPacking {

    /** One thing to lay: the rings it may lie as, each with the lower left corner of its box at the origin. */
    public record Item(List<Ring> ways) {

        public Item {
            ways = List.copyOf(ways);
        }
    }

    /**
     * Where an item lies.
     *
     * @param way index among the item's ways
     * @param x left edge of its box, in cm
     * @param y lower edge of its box, in cm
     */
    public record Spot(int way, double x, double y) {}

    private StripPacking() {}

    /**
     * A spot for each item. Any two keep the gap; every item lies within the strip; touching may overlap by 0.00001 mm.
     *
     * @param stripWidth in cm, at least the width of every ring
     * @param gap least distance along or across, in cm
     * @param lowerBound length in cm at which the search may stop
     * @param watch told of each better length, may end the search
     */
    public static List<Spot> spots(
            double stripWidth,
            double gap,
            double lowerBound,
            List<Item> items,
            double seconds,
            long seed,
            Watch watch) {
        ItemKinds kinds = new ItemKinds(items);
        return List.of(new PackingSearch(stripWidth, gap, lowerBound, kinds, seconds, seed, watch).best());
    }
}
