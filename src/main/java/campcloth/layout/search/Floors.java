package campcloth.layout.search;

/**
 * For each shape the height below which it has no free spot, while shapes are laid one after the other: what lies only grows,
 * so a spot once taken or passed over stays so. Entries are forgotten with the shapes they were found over.
 */
final class Floors {

    private final int[][] overCount;
    private final double[][] height;
    private final int[] entries;

    Floors(int shapes, int items) {
        overCount = new int[shapes][items + 1];
        height = new double[shapes][items + 1];
        entries = new int[shapes];
    }

    /** Height below which nothing is free for a shape, with some number of shapes lying. */
    double of(Shape shape, int count) {
        int id = shape.id;
        while (entries[id] > 0 && overCount[id][entries[id] - 1] > count) {
            entries[id]--;
        }
        return entries[id] == 0 ? 0 : height[id][entries[id] - 1];
    }

    /** Notes that nothing is free below a height. */
    void raise(Shape shape, int count, double to) {
        int id = shape.id;
        double known = of(shape, count);
        boolean same = entries[id] > 0 && overCount[id][entries[id] - 1] == count;
        int at = same ? entries[id] - 1 : entries[id]++;
        overCount[id][at] = count;
        height[id][at] = Math.max(known, to);
    }

    /** Forgets what was found over more than the first shapes. */
    void keepFirst(int count) {
        for (int id = 0; id < entries.length; id++) {
            while (entries[id] > 0 && overCount[id][entries[id] - 1] > count) {
                entries[id]--;
            }
        }
    }
}
