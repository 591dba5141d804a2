package campcloth.layout.search;

import java.util.Collections;
import java.util.List;

/**
 * Packing of shapes on a strip, the face of the engine towards its room: what goes in and comes out is rings and spots, so
 * that another engine can stand in its place.
 */
public final class StripPacking {

    /**
     * One thing to lay: the rings it may lie as, each with the lower left corner of its box at the origin.
     *
     * @param ways the rings
     * @param held by way: where it is held to
     */
    public record Item(List<Ring> ways, List<Held> held) {

        public Item {
            ways = List.copyOf(ways);
            held = List.copyOf(held);
        }

        public Item(List<Ring> ways) {
            this(ways, Collections.nCopies(ways.size(), Held.FREE));
        }
    }

    /** Something that lies there before: a ring at its place. */
    public record Fixed(Ring ring) {}

    /**
     * The strip with what lies on it already.
     *
     * @param width in cm, at least the width of every ring
     * @param gap least distance along or across, in cm
     * @param base height in cm from which length counts
     * @param fixed what lies there before; may reach over the edges of the strip
     */
    public record Ground(double width, double gap, double base, List<Fixed> fixed) {

        public Ground {
            fixed = List.copyOf(fixed);
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

    /**
     * What a search gives.
     *
     * @param spots one for each item
     * @param seconds what its counted steps come to; the first filling is always finished, so maybe more than was asked
     */
    public record Packed(List<Spot> spots, double seconds) {

        public Packed {
            spots = List.copyOf(spots);
        }
    }

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

    /** A spot for each item where items are held to places or something lies there before; length counts from the base. */
    public static Packed heldSpots(
            Ground ground, double lowerBound, List<Item> items, double seconds, long seed, Watch watch) {
        Work work = new Work(seconds, watch);
        ItemKinds kinds = new ItemKinds(items, ground);
        Spot[] spots = new OrderSearch(ground.width, ground.gap, lowerBound, kinds, work, seed).best();
        return new Packed(List.of(spots), work.spentSeconds());
    }
}
