package campcloth.layout.search;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What one item would cost at a spot among the others as they lie: the weighted sum of its depths. For each way of the item
 * the strip is divided into rows and columns of cells; of each is known which no-fit polygons reach it, so that a spot is
 * compared with those near it alone.
 */
final class SpotCosts {

    private static final int CELLS = 32;
    private static final int PRICE_OF_SPOT = 3;
    private static final long PRICE_OF_OTHER = 5;

    private final Overlaps overlaps;
    private final DepthTable depths;
    private final double stripWidth;
    private final int count;
    private final int words;
    /** By way: bits of the items whose no-fit polygons reach a row, or a column. */
    private final long[][] rows;

    private final long[][] columns;
    private final Depth[][] polygon;
    private final double[] rooms;
    private final double[] heights;

    private int item;
    private int way;
    private double room;
    private double height;
    private double rowsPerCm;
    private double columnsPerCm;

    SpotCosts(double stripWidth, Overlaps overlaps, DepthTable depths) {
        this.stripWidth = stripWidth;
        this.overlaps = overlaps;
        this.depths = depths;
        this.count = overlaps.count;
        this.words = (count + Long.SIZE - 1) / Long.SIZE;
        int ways = IntStream.range(0, count).map(overlaps.kinds::ways).max().orElse(1);
        this.rows = new long[ways][CELLS * words];
        this.columns = new long[ways][CELLS * words];
        this.polygon = new Depth[ways][count];
        this.rooms = new double[ways];
        this.heights = new double[ways];
    }

    int way() {
        return way;
    }

    /** Greatest x of a spot of the way looked at, in cm; the least is 0. */
    double room() {
        return room;
    }

    /** Greatest y of a spot of the way looked at, in cm; the least is 0. */
    double height() {
        return height;
    }

    /** Gets an item ready in one way and looks at that; whether it fits the length. */
    boolean prepare(int moving, int inWay, double length) {
        item = moving;
        Shape shape = overlaps.kinds.shape(item, inWay);
        rooms[inWay] = Math.max(0, stripWidth - shape.width);
        heights[inWay] = length - shape.height;
        if (heights[inWay] < 0) {
            return false;
        }
        look(inWay);
        gather(shape);
        return true;
    }

    /** Looks at a way got ready. */
    void look(int inWay) {
        way = inWay;
        room = rooms[way];
        height = heights[way];
        rowsPerCm = height > 0 ? CELLS / height : 0;
        columnsPerCm = room > 0 ? CELLS / room : 0;
    }

    private void gather(Shape shape) {
        Arrays.fill(rows[way], 0);
        Arrays.fill(columns[way], 0);
        for (int other = 0; other < count; other++) {
            if (other != item) {
                Depth depth = depths.of(overlaps.shape(other), shape);
                polygon[way][other] = depth;
                double y = overlaps.y[other];
                double x = overlaps.x[other];
                mark(rows[way], other, y + depth.low, y + depth.high, rowsPerCm, height);
                mark(columns[way], other, x + depth.left, x + depth.right, columnsPerCm, room);
            }
        }
        depths.work().spend(PRICE_OF_OTHER * count);
    }

    private void mark(long[] cells, int other, double from, double to, double perCm, double most) {
        if (to < 0 || from > most) {
            return;
        }
        int word = other / Long.SIZE;
        long bit = 1L << other;
        int last = cell(to, perCm);
        for (int cell = cell(from, perCm); cell <= last; cell++) {
            cells[cell * words + word] |= bit;
        }
    }

    private static int cell(double at, double perCm) {
        return Math.min(CELLS - 1, (int) (Math.max(0, at) * perCm));
    }

    /** Cost at a spot; some number from the limit on where it is not under the limit. */
    double at(double x, double y, double limit) {
        int row = cell(y, rowsPerCm) * words;
        int column = cell(x, columnsPerCm) * words;
        double cost = 0;
        int paid = PRICE_OF_SPOT;
        for (int word = 0; word < words; word++) {
            long bits = rows[way][row + word] & columns[way][column + word];
            while (bits != 0 && cost < limit) {
                int other = word * Long.SIZE + Long.numberOfTrailingZeros(bits);
                bits &= bits - 1;
                Depth depth = polygon[way][other];
                paid += depth.price();
                cost += overlaps.weight[item * count + other] * depth.at(x - overlaps.x[other], y - overlaps.y[other]);
            }
        }
        depths.work().spend(paid);
        return cost;
    }

    /** Writes the edges over which the ways out of a spot lead; three numbers each: normal x, normal y, reach. */
    int waysOut(double x, double y, double[] lines, int most) {
        int row = cell(y, rowsPerCm) * words;
        int column = cell(x, columnsPerCm) * words;
        int found = 0;
        int paid = PRICE_OF_SPOT;
        for (int word = 0; word < words; word++) {
            long bits = rows[way][row + word] & columns[way][column + word];
            while (bits != 0 && found < most) {
                int other = word * Long.SIZE + Long.numberOfTrailingZeros(bits);
                bits &= bits - 1;
                Depth depth = polygon[way][other];
                paid += depth.price();
                double otherX = overlaps.x[other];
                double otherY = overlaps.y[other];
                int plane = depth.wayOut(x - otherX, y - otherY);
                if (plane >= 0) {
                    double normalX = depth.normalX(plane);
                    double normalY = depth.normalY(plane);
                    lines[3 * found] = normalX;
                    lines[3 * found + 1] = normalY;
                    lines[3 * found++ + 2] = depth.reach(plane) + normalX * otherX + normalY * otherY;
                }
            }
        }
        depths.work().spend(paid);
        return found;
    }
}
