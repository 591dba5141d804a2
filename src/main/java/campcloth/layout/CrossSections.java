package campcloth.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * The cross-sections of an outline across the cloth: between the heights of consecutive corners each stretch that lies
 * inside changes its width evenly. Not changed by turning by 180 degrees or mirroring.
 */
final class CrossSections {

    /**
     * Stretches that run along the cloth for a while.
     *
     * @param lowWidthCm width at the lower end
     * @param highWidthCm width at the upper end
     * @param heightCm how long, along the cloth
     */
    record Section(double lowWidthCm, double highWidthCm, double heightCm) {}

    private record Edge(Point low, Point high) {

        double xAt(double y) {
            return low.xCm() + (y - low.yCm()) / (high.yCm() - low.yCm()) * (high.xCm() - low.xCm());
        }
    }

    private CrossSections() {}

    static List<Section> of(Outline outline) {
        List<Edge> edges = edges(outline);
        List<Double> heights = new ArrayList<>(
                new TreeSet<>(outline.points().stream().map(Point::yCm).toList()));
        List<Section> sections = new ArrayList<>();
        List<Edge> active = new ArrayList<>();
        int next = 0;
        for (int i = 0; i + 1 < heights.size(); i++) {
            double low = heights.get(i);
            double high = heights.get(i + 1);
            active.removeIf(edge -> edge.high.yCm() <= low);
            while (next < edges.size() && edges.get(next).low.yCm() <= low) {
                active.add(edges.get(next++));
            }
            addSections(active, low, high, sections);
        }
        return sections;
    }

    private static void addSections(List<Edge> active, double low, double high, List<Section> sections) {
        double middle = (low + high) / 2;
        active.sort(Comparator.comparingDouble(edge -> edge.xAt(middle)));
        for (int e = 0; e + 1 < active.size(); e += 2) {
            Edge left = active.get(e);
            Edge right = active.get(e + 1);
            sections.add(new Section(
                    Math.max(0, right.xAt(low) - left.xAt(low)),
                    Math.max(0, right.xAt(high) - left.xAt(high)),
                    high - low));
        }
    }

    private static List<Edge> edges(Outline outline) {
        List<Point> points = outline.points();
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            if (a.yCm() != b.yCm()) {
                edges.add(a.yCm() < b.yCm() ? new Edge(a, b) : new Edge(b, a));
            }
        }
        edges.sort(Comparator.comparingDouble(edge -> edge.low.yCm()));
        return edges;
    }
}
