package campcloth.layout.search;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Looks for a spot of less cost for one item among the others as they lie: spots drawn over the whole strip and about the
 * present one, for all ways; the best few go down to a local least. Within a part of every no-fit polygon that holds a spot
 * the cost is concave, so its least values lie where two edges cross: from a spot the descent tries the ways out over the
 * edges of what it overlaps and the crossings of such edges.
 */
final class SpotSearch {

    private static final int CELLS = 32;
    private static final int STARTS = Integer.getInteger("starts", 3);
    private static final int MOST_LINES = 8;
    private static final int MOST_STEPS = 12;
    private static final double ROUND = 1e9;

    int overStrip = Integer.getInteger("wide", 20);
    int nearby = Integer.getInteger("near", 10);

    private final Overlaps overlaps;
    private final DepthTable depths;
    private final Work work;
    private final SplittableRandom random;
    private final double stripWidth;
    private final int count;
    private final int words;
    /** Bits of the items whose no-fit polygons reach a row or column of cells. */
    private final long[][] rows;

    private final long[][] columns;
    private final Depth[][] polygon;

    private int item;
    private int way;
    private final double[] rooms;
    private final double[] heights;
    private double room;
    private double height;
    private double rowsPerCm;
    private double columnsPerCm;

    private final int[] startWay = new int[STARTS];
    private final double[] startCost = new double[STARTS];
    private final double[] startX = new double[STARTS];
    private final double[] startY = new double[STARTS];
    private int starts;

    /** Lines, three numbers each: normal x, normal y, reach; the first of this spot, then those of the one before. */
    private double[] lines = new double[6 * MOST_LINES];

    private int lineCount;
    private int newLines;
    private double reachedX;
    private double reachedY;
    private double reachedCost;

    private int bestWay;
    private double bestX;
    private double bestY;
    private double bestCost;

    SpotSearch(double stripWidth, Overlaps overlaps, DepthTable depths, SplittableRandom random) {
        this.stripWidth = stripWidth;
        this.overlaps = overlaps;
        this.depths = depths;
        this.work = depths.work();
        this.random = random;
        this.count = overlaps.count;
        this.words = (count + 63) / 64;
        int ways = IntStream.range(0, count).map(overlaps.kinds::ways).max().orElse(1);
        this.rows = new long[ways][CELLS * words];
        this.columns = new long[ways][CELLS * words];
        this.polygon = new Depth[ways][count];
        this.rooms = new double[ways];
        this.heights = new double[ways];
    }

    /** Width left for the spots of a shape, in cm. */
    double roomFor(Shape shape) {
        return Math.max(0, stripWidth - shape.width);
    }

    /** Moves an item to a spot of less cost, where one is found. */
    boolean improve(int moving, double length) {
        item = moving;
        int present = overlaps.way[item];
        double before = overlaps.cost(item);
        bestCost = before;
        starts = 0;
        sample(present, length, overStrip, nearby, true);
        for (int other = 0; other < overlaps.kinds.ways(item); other++) {
            if (other != present) {
                sample(other, length, overStrip, nearby, false);
            }
        }
        for (int i = 0; i < starts && bestCost > 0; i++) {
            look(startWay[i]);
            descend(startX[i], startY[i], startCost[i]);
            if (reachedCost < bestCost) {
                bestCost = reachedCost;
                bestWay = way;
                bestX = reachedX;
                bestY = reachedY;
            }
        }
        if (bestCost >= before) {
            return false;
        }
        overlaps.move(item, bestWay, bestX, bestY);
        return true;
    }

    private void sample(int inWay, double length, int wide, int near, boolean present) {
        Shape shape = overlaps.kinds.shape(item, inWay);
        rooms[inWay] = roomFor(shape);
        heights[inWay] = length - shape.height;
        if (heights[inWay] < 0) {
            return;
        }
        look(inWay);
        gather(shape);
        double atX = overlaps.x[item];
        double atY = overlaps.y[item];
        if (!present) {
            atX = between(0, atX + (overlaps.shape(item).width - shape.width) / 2, room);
            atY = between(0, atY + (overlaps.shape(item).height - shape.height) / 2, height);
        }
        consider(atX, atY);
        for (int i = 0; i < wide; i++) {
            consider(random.nextDouble() * room, random.nextDouble() * height);
        }
        for (int i = 0; i < near; i++) {
            consider(
                    between(0, atX + (random.nextDouble() - 0.5) * shape.width, room),
                    between(0, atY + (random.nextDouble() - 0.5) * shape.height, height));
        }
    }

    /** Takes a way as the one looked at. */
    private void look(int inWay) {
        way = inWay;
        room = rooms[way];
        height = heights[way];
        rowsPerCm = height > 0 ? CELLS / height : 0;
        columnsPerCm = room > 0 ? CELLS / room : 0;
    }

    private static double between(double least, double value, double most) {
        return Math.max(least, Math.min(most, value));
    }

    private void gather(Shape shape) {
        Arrays.fill(rows[way], 0);
        Arrays.fill(columns[way], 0);
        for (int other = 0; other < count; other++) {
            if (other != item) {
                Depth depth = depths.of(overlaps.shape(other), shape);
                polygon[way][other] = depth;
                long bit = 1L << other;
                int word = other >> 6;
                mark(rows[way], overlaps.y[other] + depth.low, overlaps.y[other] + depth.high, rowsPerCm, height, word, bit);
                mark(
                        columns[way],
                        overlaps.x[other] + depth.left,
                        overlaps.x[other] + depth.right,
                        columnsPerCm,
                        room,
                        word,
                        bit);
            }
        }
        work.spend(5L * count);
    }

    private void mark(long[] cells, double from, double to, double perCm, double most, int word, long bit) {
        if (to < 0 || from > most) {
            return;
        }
        int last = cell(to, perCm);
        for (int cell = cell(from, perCm); cell <= last; cell++) {
            cells[cell * words + word] |= bit;
        }
    }

    private static int cell(double at, double perCm) {
        return Math.min(CELLS - 1, (int) (Math.max(0, at) * perCm));
    }

    private void consider(double atX, double atY) {
        double limit = starts == STARTS ? startCost[STARTS - 1] : Double.POSITIVE_INFINITY;
        double cost = cost(atX, atY, limit);
        if (cost < limit) {
            int at = starts == STARTS ? STARTS - 1 : starts++;
            while (at > 0 && startCost[at - 1] > cost) {
                startCost[at] = startCost[at - 1];
                startWay[at] = startWay[at - 1];
                startX[at] = startX[at - 1];
                startY[at] = startY[at - 1];
                at--;
            }
            startCost[at] = cost;
            startWay[at] = way;
            startX[at] = atX;
            startY[at] = atY;
        }
    }

    /** Weighted sum of the depths at a spot; the limit or more where it is not under the limit. */
    private double cost(double atX, double atY, double limit) {
        int row = cell(atY, rowsPerCm) * words;
        int column = cell(atX, columnsPerCm) * words;
        double cost = 0;
        int paid = 3;
        for (int word = 0; word < words; word++) {
            long bits = rows[way][row + word] & columns[way][column + word];
            while (bits != 0) {
                int other = (word << 6) + Long.numberOfTrailingZeros(bits);
                bits &= bits - 1;
                Depth depth = polygon[way][other];
                double deep = depth.at(atX - overlaps.x[other], atY - overlaps.y[other]);
                paid += depth.price();
                if (deep > 0) {
                    cost += deep * overlaps.weight[item * count + other];
                    if (cost >= limit) {
                        work.spend(paid);
                        return cost;
                    }
                }
            }
        }
        work.spend(paid);
        return cost;
    }

    private void descend(double fromX, double fromY, double fromCost) {
        reachedX = fromX;
        reachedY = fromY;
        reachedCost = fromCost;
        lineCount = 0;
        for (int step = 0; step < MOST_STEPS && reachedCost > 0; step++) {
            gatherLines();
            double before = reachedCost;
            tryWaysOut();
            if (reachedCost >= before * (1 - 1e-6)) {
                return;
            }
        }
    }

    /** The edges over which the ways out lead, before those of the last spot. */
    private void gatherLines() {
        int kept = Math.min(lineCount, MOST_LINES);
        System.arraycopy(lines, 0, lines, 3 * MOST_LINES, 3 * kept);
        int row = cell(reachedY, rowsPerCm) * words;
        int column = cell(reachedX, columnsPerCm) * words;
        newLines = 0;
        int paid = 0;
        for (int word = 0; word < words; word++) {
            long bits = rows[way][row + word] & columns[way][column + word];
            while (bits != 0) {
                int other = (word << 6) + Long.numberOfTrailingZeros(bits);
                bits &= bits - 1;
                Depth depth = polygon[way][other];
                paid += depth.price();
                int plane = depth.wayOut(reachedX - overlaps.x[other], reachedY - overlaps.y[other]);
                if (plane >= 0 && newLines < MOST_LINES) {
                    double normalX = depth.normalX(plane);
                    double normalY = depth.normalY(plane);
                    addLine(
                            normalX,
                            normalY,
                            depth.reach(plane) + normalX * overlaps.x[other] + normalY * overlaps.y[other]);
                }
            }
        }
        work.spend(paid);
        System.arraycopy(lines, 3 * MOST_LINES, lines, 3 * newLines, 3 * kept);
        lineCount = newLines + kept;
    }

    private void addLine(double normalX, double normalY, double reach) {
        lines[3 * newLines] = normalX;
        lines[3 * newLines + 1] = normalY;
        lines[3 * newLines++ + 2] = reach;
    }

    private void tryWaysOut() {
        double fromX = reachedX;
        double fromY = reachedY;
        for (int i = 0; i < newLines; i++) {
            double normalX = lines[3 * i];
            double normalY = lines[3 * i + 1];
            double reach = lines[3 * i + 2];
            double deep = reach - normalX * fromX - normalY * fromY;
            tryAt(fromX + deep * normalX, fromY + deep * normalY);
            tryOnWalls(normalX, normalY, reach, fromX, fromY);
            for (int j = i + 1; j < lineCount; j++) {
                double cross = normalX * lines[3 * j + 1] - normalY * lines[3 * j];
                if (Math.abs(cross) > 1e-3) {
                    double reachOfOther = lines[3 * j + 2];
                    tryAt(
                            (reach * lines[3 * j + 1] - normalY * reachOfOther) / cross,
                            (normalX * reachOfOther - lines[3 * j] * reach) / cross);
                }
            }
        }
    }

    /** Where a line crosses the ends of the room for the item that are near. */
    private void tryOnWalls(double normalX, double normalY, double reach, double fromX, double fromY) {
        if (Math.abs(normalY) > 1e-3) {
            double wall = fromX < room / 2 ? 0 : room;
            tryAt(wall, (reach - normalX * wall) / normalY);
        }
        if (Math.abs(normalX) > 1e-3) {
            double wall = fromY < height / 2 ? 0 : height;
            tryAt((reach - normalY * wall) / normalX, wall);
        }
    }

    private void tryAt(double atX, double atY) {
        double roundX = Math.rint(atX * ROUND) / ROUND;
        double roundY = Math.rint(atY * ROUND) / ROUND;
        if (roundX >= 0 && roundX <= room && roundY >= 0 && roundY <= height) {
            double cost = cost(roundX, roundY, reachedCost);
            if (cost < reachedCost) {
                reachedCost = cost;
                reachedX = roundX;
                reachedY = roundY;
            }
        }
    }
}
