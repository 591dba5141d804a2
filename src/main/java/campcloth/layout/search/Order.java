package campcloth.layout.search;

import java.util.random.RandomGenerator;

/** The order in which items are laid, the way each lies, and by what rule a free way is chosen. */
final class Order {

    /** The way of an item that is chosen when it is laid. */
    static final int FREE = -1;

    /** What makes one way of lying better than another for an item of free way. */
    enum Rule {
        LEAST_LOW_EDGE,
        LEAST_TOP_EDGE
    }

    final int[] items;
    /** By item: its way, or free. */
    final int[] ways;

    Rule rule;
    boolean rightmost;

    Order(int[] items, int[] ways, Rule rule, boolean rightmost) {
        this.items = items;
        this.ways = ways;
        this.rule = rule;
        this.rightmost = rightmost;
    }

    Order copy() {
        return new Order(items.clone(), ways.clone(), rule, rightmost);
    }

    /** A neighbour: two items exchanged, one moved, a stretch moved, or a way changed. */
    Order varied(RandomGenerator random, ItemKinds kinds) {
        Order varied = copy();
        int size = items.length;
        double move = random.nextDouble();
        if (move < 0.25) {
            int item = random.nextInt(size);
            varied.ways[item] = random.nextInt(kinds.ways(item) + 1) - 1;
        } else if (move < 0.6) {
            varied.exchange(random.nextInt(size), random, kinds);
        } else if (move < 0.9) {
            move(varied.items, random.nextInt(size), 1, random.nextInt(size));
        } else if (move < 0.98) {
            int length = 1 + random.nextInt(Math.max(1, size / 4));
            move(varied.items, random.nextInt(size - length + 1), length, random.nextInt(size - length + 1));
        } else if (random.nextBoolean()) {
            varied.rightmost = !rightmost;
        } else {
            varied.rule = rule == Rule.LEAST_LOW_EDGE ? Rule.LEAST_TOP_EDGE : Rule.LEAST_LOW_EDGE;
        }
        return varied;
    }

    /** Exchanges an item with one of another kind, where a few tries find one. */
    private void exchange(int at, RandomGenerator random, ItemKinds kinds) {
        for (int attempt = 0; attempt < 8; attempt++) {
            int other = random.nextInt(items.length);
            if (kinds.kind(items[at]) != kinds.kind(items[other])) {
                int kept = items[at];
                items[at] = items[other];
                items[other] = kept;
                return;
            }
        }
    }

    /** Any order, every way free. */
    void shuffle(RandomGenerator random) {
        for (int i = items.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = items[i];
            items[i] = items[other];
            items[other] = kept;
        }
        java.util.Arrays.fill(ways, FREE);
    }

    private static void move(int[] items, int from, int length, int to) {
        int[] stretch = java.util.Arrays.copyOfRange(items, from, from + length);
        if (to > from) {
            System.arraycopy(items, from + length, items, from, to - from);
        } else {
            System.arraycopy(items, to, items, to + length, from - to);
        }
        System.arraycopy(stretch, 0, items, to, length);
    }
}
