package campcloth.layout.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The orders a search begins with: by size in several senses, large first, each with both rules. */
final class StartOrders {

    private final ItemKinds kinds;
    private final double stripWidth;

    StartOrders(ItemKinds kinds, double stripWidth) {
        this.kinds = kinds;
        this.stripWidth = stripWidth;
    }

    List<Order> all() {
        List<Comparator<Shape>> senses = List.of(
                Comparator.comparingDouble(shape -> -shape.area),
                Comparator.comparingDouble(shape -> -shape.height),
                Comparator.comparingDouble(shape -> -shape.width),
                Comparator.comparingDouble(shape -> -shape.width * shape.height),
                Comparator.comparing((Shape shape) -> shape.width <= stripWidth / 2)
                        .thenComparingDouble(shape -> -shape.height));
        List<Order> orders = new ArrayList<>();
        for (Order.Rule rule : Order.Rule.values()) {
            for (Comparator<Shape> sense : senses) {
                orders.add(order(sense, rule));
            }
        }
        return orders;
    }

    private Order order(Comparator<Shape> sense, Order.Rule rule) {
        int[] items = IntStream.range(0, kinds.items())
                .boxed()
                .sorted((a, b) -> {
                    int bySense = sense.compare(kinds.shape(a, 0), kinds.shape(b, 0));
                    return bySense != 0 ? bySense : Integer.compare(kinds.kind(a), kinds.kind(b));
                })
                .mapToInt(Integer::intValue)
                .toArray();
        int[] ways = new int[kinds.items()];
        Arrays.fill(ways, Order.FREE);
        return new Order(items, ways, rule, false);
    }

    /** Number of orders that differ in kinds, or the limit where it is more. */
    long permutations(long limit) {
        int[] ofKind = new int[kinds.items()];
        long orders = 1;
        for (int item = 0; item < kinds.items(); item++) {
            int copies = ++ofKind[kinds.kind(item)];
            orders = orders * (item + 1) / copies;
            if (orders >= limit) {
                return limit;
            }
        }
        return orders;
    }

    /** Steps to the next order of kinds in the sense of their numbers; false after the last. */
    boolean next(int[] items) {
        int pivot = items.length - 2;
        while (pivot >= 0 && kinds.kind(items[pivot]) >= kinds.kind(items[pivot + 1])) {
            pivot--;
        }
        if (pivot < 0) {
            return false;
        }
        int above = items.length - 1;
        while (kinds.kind(items[above]) <= kinds.kind(items[pivot])) {
            above--;
        }
        exchange(items, pivot, above);
        for (int i = pivot + 1, j = items.length - 1; i < j; i++, j--) {
            exchange(items, i, j);
        }
        return true;
    }

    private static void exchange(int[] items, int i, int j) {
        int kept = items[i];
        items[i] = items[j];
        items[j] = kept;
    }
}
