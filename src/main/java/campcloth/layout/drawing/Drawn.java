package campcloth.layout.drawing;

import campcloth.figure.Words;
import campcloth.layout.CuttingSheet;
import campcloth.layout.Point;
import campcloth.layout.SheetPart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A part with its number in the cutting order and what of it lies on the sheet.
 *
 * @param number from 1
 * @param part the part
 * @param shape its outline as far as it lies on the sheet
 * @param marks what to measure on it
 * @param sheetWidthCm width of the sheet
 */
record Drawn(int number, SheetPart part, Shape shape, Marks marks, double sheetWidthCm) {

    private static final double FOLD_CM = 1e-6;

    /** All parts of a sheet in the order in which they are cut. */
    static List<Drawn> all(CuttingSheet sheet, CutOrder order, List<Shape> shapes) {
        Clip whole = whole(sheet);
        List<Drawn> parts = new ArrayList<>();
        for (int i : order.order()) {
            Shape shape = shapes.get(i);
            parts.add(
                    new Drawn(parts.size() + 1, sheet.parts().get(i), shape, Marks.of(shape, whole), sheet.widthCm()));
        }
        return parts;
    }

    static List<Shape> shapes(CuttingSheet sheet) {
        Clip whole = whole(sheet);
        return sheet.parts().stream()
                .map(part -> whole.of(new Shape(part.outline().points())))
                .toList();
    }

    private static Clip whole(CuttingSheet sheet) {
        return new Clip(0, 0, sheet.widthCm(), sheet.lengthCm());
    }

    boolean liesOnFold(Point a, Point b) {
        double fold = switch (part.cut()) {
            case ON_LEFT_FOLD -> 0;
            case ON_RIGHT_FOLD -> sheetWidthCm;
            case ONE_LAYER, BOTH_LAYERS -> Double.NaN;
        };
        return Math.abs(a.xCm() - fold) < FOLD_CM && Math.abs(b.xCm() - fold) < FOLD_CM;
    }

    /** A point in cm from the edge that its part is measured from, and from the cut edge. */
    String measured(Point point) {
        String across = part.cut() == SheetPart.Cut.ON_RIGHT_FOLD
                ? "←" + cm(sheetWidthCm - point.xCm())
                : "→" + cm(point.xCm());
        return across + " ↑" + cm(point.yCm());
    }

    /** What to measure, each with the point at which it is written; what lies at the ends of the part first. */
    Map<String, Point> measures() {
        Map<String, Point> measures = new LinkedHashMap<>();
        marks.corners().stream()
                .sorted(Comparator.comparingDouble(this::fromEndCm))
                .forEach(corner -> measures.putIfAbsent(measured(corner), corner));
        marks.arcs().forEach(arc -> measures.put(rounded(arc), arc.middle()));
        return measures;
    }

    private double fromEndCm(Point corner) {
        return Math.min(corner.yCm() - shape.lowCm(), shape.topCm() - corner.yCm());
    }

    String rounded(Arc arc) {
        return "r " + cm(arc.radiusCm()) + " from " + measured(arc.centre());
    }

    /** Extent across and along, the whole piece also where only half of it is chalked. */
    String size() {
        return cm(part.outline().widthCm()) + " × " + cm(part.outline().heightCm());
    }

    String layers() {
        return switch (part.cut()) {
            case ONE_LAYER -> "";
            case BOTH_LAYERS -> "through both layers";
            case ON_LEFT_FOLD, ON_RIGHT_FOLD -> "half, on the fold";
        };
    }

    String lying() {
        return (part.turned() ? ", top down" : "") + (part.mirrored() ? ", pattern turned over" : "");
    }

    /** Size and place in words. */
    String sentence() {
        String layers = layers();
        return number + ": " + part.name() + (layers.isEmpty() ? "" : ", " + layers) + ", " + size() + " cm" + lying();
    }

    /** To a mm, without a trailing nought. */
    static String cm(double value) {
        String fixed = Words.fixed(value, 1);
        return fixed.endsWith(".0") ? fixed.substring(0, fixed.length() - 2) : fixed;
    }
}
