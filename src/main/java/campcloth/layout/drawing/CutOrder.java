package campcloth.layout.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * An order in which parts can be cut out, from the cut edge on. Where a straight cut across the whole cloth meets no part,
 * it comes first and frees what lies before it; what it frees is parted by straight cuts along, those pieces again by
 * cuts across, and so on. What no straight cut parts comes in such an order that nothing uncut lies between a part and the
 * cut edge, as far as the parts do not reach into each other.
 *
 * @param order places in the list of shapes, the first to cut first
 * @param crossCutsCm heights of the cuts across the whole cloth, from the cut edge
 */
record CutOrder(List<Integer> order, List<Double> crossCutsCm) {

    private static final double TOUCH_CM = 1e-6;

    CutOrder {
        order = List.copyOf(order);
        crossCutsCm = List.copyOf(crossCutsCm);
    }

    static CutOrder of(List<Shape> shapes) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            all.add(i);
        }
        List<List<Integer>> sections = parted(shapes, all, false);
        List<Double> cuts = new ArrayList<>();
        List<Integer> order = new ArrayList<>();
        for (List<Integer> section : sections) {
            order.addAll(ordered(shapes, section, true));
            cuts.add(section.stream()
                    .mapToDouble(i -> shapes.get(i).topCm())
                    .max()
                    .orElse(0));
        }
        return new CutOrder(order, cuts.isEmpty() ? cuts : cuts.subList(0, cuts.size() - 1));
    }

    private static List<Integer> ordered(List<Shape> shapes, List<Integer> block, boolean along) {
        List<List<Integer>> parts = parted(shapes, block, along);
        if (parts.size() == 1) {
            parts = parted(shapes, block, !along);
            if (parts.size() == 1) {
                return fromBelow(shapes, block);
            }
            return joined(shapes, parts, along);
        }
        return joined(shapes, parts, !along);
    }

    private static List<Integer> joined(List<Shape> shapes, List<List<Integer>> parts, boolean along) {
        List<Integer> order = new ArrayList<>();
        parts.forEach(part -> order.addAll(ordered(shapes, part, along)));
        return order;
    }

    /** The parts between straight cuts, along or across, that meet none of the shapes. */
    private static List<List<Integer>> parted(List<Shape> shapes, List<Integer> block, boolean along) {
        List<Integer> sorted = new ArrayList<>(block);
        sorted.sort(Comparator.comparingDouble((Integer i) -> start(shapes.get(i), along))
                .thenComparingInt(i -> i));
        List<List<Integer>> parts = new ArrayList<>();
        double reached = Double.NEGATIVE_INFINITY;
        for (Integer i : sorted) {
            if (parts.isEmpty() || start(shapes.get(i), along) >= reached - TOUCH_CM) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(i);
            reached = Math.max(
                    reached, along ? shapes.get(i).rightCm() : shapes.get(i).topCm());
        }
        return parts;
    }

    private static double start(Shape shape, boolean along) {
        return along ? shape.leftCm() : shape.lowCm();
    }

    private static List<Integer> fromBelow(List<Shape> shapes, List<Integer> block) {
        List<Integer> left = new ArrayList<>(block);
        left.sort(Comparator.comparingDouble((Integer i) -> shapes.get(i).lowCm())
                .thenComparingDouble(i -> shapes.get(i).leftCm())
                .thenComparingInt(i -> i));
        boolean[][] before = new boolean[shapes.size()][shapes.size()];
        for (int i : block) {
            for (int j : block) {
                before[i][j] = i != j && mustGoFirst(shapes.get(i), shapes.get(j));
            }
        }
        List<Integer> order = new ArrayList<>();
        while (!left.isEmpty()) {
            Integer next = left.stream()
                    .filter(i -> left.stream().noneMatch(j -> before[j][i]))
                    .findFirst()
                    .orElse(left.get(0));
            order.add(next);
            left.remove(next);
        }
        return order;
    }

    private static boolean mustGoFirst(Shape lower, Shape upper) {
        return Below.isBelow(lower, upper) && !Below.isBelow(upper, lower);
    }
}
