package campcloth.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Sheets with shapes that are hard to draw. */
final class Sheets {

    private Sheets() {}

    static CuttingSheet open(double widthCm, List<Piece> pieces) {
        return CuttingSheet.of(Nesting.layout(Strip.ofWidth(widthCm), pieces, new Effort(0.05, 1)), "Shapes");
    }

    /** Gores, a hood, a quarter and a half of a circle, an egg, a band, a gusset, a loop. */
    static CuttingSheet hardShapes() {
        return open(
                150,
                List.of(
                        new Piece("gore", polygon(0, 0, 40, 0, 20, 75), 4, true, false, false),
                        new Piece("hood", hood(), 2, true, false, true),
                        new Piece("quarter of a cloak", quarter(70, 12), 1, true, false, false),
                        new Piece("half circle", arc(0, 0, 30, 30, 0, 180), 1, true, false, false),
                        new Piece("egg", arc(0, 0, 20, 30, 0, 350), 1, true, false, false),
                        new Piece("belt band of the outer coat", Outline.rectangle(6, 140), 2, true, false, false),
                        new Piece("gusset", Outline.rectangle(14, 14), 4, true, false, false),
                        new Piece("loop", Outline.rectangle(2, 8), 5, true, false, false)));
    }

    /** On the fold and through both layers. */
    static CuttingSheet folded() {
        List<SheetPart> parts = List.of(
                new SheetPart(
                        "back", Outline.rectangle(60, 90).movedTo(40, 0), false, false, SheetPart.Cut.ON_RIGHT_FOLD),
                new SheetPart(
                        "sleeve 1 and 2",
                        Outline.rectangle(30, 50).movedTo(5, 4),
                        true,
                        false,
                        SheetPart.Cut.BOTH_LAYERS));
        return new CuttingSheet(
                "Folded", List.of(), 70, 90, ClothEdge.BOTH_SELVEDGES, ClothEdge.fold(70), parts, false, List.of());
    }

    static CuttingSheet many(int count) {
        SplittableRandom random = new SplittableRandom(4);
        List<Piece> pieces = new ArrayList<>();
        Map<Integer, String> names = Map.of(0, "front panel", 1, "sleeve", 2, "gore", 3, "gusset");
        for (int i = 0; i < count; i++) {
            double width = random.nextDouble(8, 45);
            pieces.add(new Piece(
                    "tunic " + (i / 4 + 1) + " " + names.get(i % 4),
                    RandomPieces.trapezoid(width, width * random.nextDouble(0.5, 0.95), random.nextDouble(10, 70)),
                    1,
                    true,
                    false,
                    false));
        }
        return open(150, pieces);
    }

    static Outline polygon(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return Outline.of(points);
    }

    private static Outline hood() {
        return polygon(0, 0, 25, 0, 25, 20, 32, 26, 32, 55, 26, 60, 0, 60, 0, 40, 6, 36, 6, 30, 0, 26);
    }

    static Outline arc(double x, double y, double across, double along, double fromDegrees, double toDegrees) {
        return Outline.of(arcPoints(x, y, across, along, fromDegrees, toDegrees));
    }

    static Outline quarter(double outerCm, double innerCm) {
        List<Point> points = new ArrayList<>(arcPoints(0, 0, outerCm, outerCm, 0, 90));
        List<Point> neck = new ArrayList<>(arcPoints(0, 0, innerCm, innerCm, 0, 90));
        java.util.Collections.reverse(neck);
        points.addAll(neck);
        return Outline.of(points);
    }

    private static List<Point> arcPoints(double x, double y, double across, double along, double from, double to) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            double angle = Math.toRadians(from + (to - from) * i / 40);
            points.add(new Point(x + across * Math.cos(angle), y + along * Math.sin(angle)));
        }
        return points;
    }
}
