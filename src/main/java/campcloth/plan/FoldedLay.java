package campcloth.plan;

import campcloth.layout.Layout;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Placement;
import campcloth.layout.Strip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The pieces on cloth folded once along its length, selvedge on selvedge: two equal pieces are cut at once through both
 * layers, a single symmetrical piece as a half along the fold. Two lays are tried: every pair through both layers with what
 * is left over along the fold behind them; and the widest pieces along the fold one behind the other, the rest beside or
 * behind them. The shorter counts. Given as on the unfolded cloth, where the upper layer lies mirrored.
 *
 * <p>It is a plain way of folding, not the shortest possible one. Empty where a piece is too wide for the half, or one has
 * no axis to fold along and no mirrored twin.
 */
final class FoldedLay {

    private static final double TOUCH_CM = 1e-9;

    /** Copies of one shape. */
    private record Shape(Outline outline, boolean pair, boolean foldable, List<Copy> copies) {}

    private record Copy(String name, int number) {}

    private final double usableWidthCm;
    private final boolean nap;
    private final Search search;
    private final List<Shape> shapes;

    private FoldedLay(double usableWidthCm, boolean nap, Search search, List<Shape> shapes) {
        this.usableWidthCm = usableWidthCm;
        this.nap = nap;
        this.search = search;
        this.shapes = shapes;
    }

    static Optional<Lay> of(double usableWidthCm, boolean nap, CutPieces pieces, Search search) {
        if (pieces.cuts().stream().anyMatch(cut -> !cut.pair() && !cut.foldable())) {
            return Optional.empty();
        }
        FoldedLay folded = new FoldedLay(usableWidthCm, nap, search, shapes(pieces));
        return List.of(folded.throughBothLayers(), folded.widestAlongTheFold()).stream()
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(Lay::lengthCm));
    }

    private static List<Shape> shapes(CutPieces pieces) {
        List<Shape> shapes = new ArrayList<>();
        for (CutPieces.Cut cut : pieces.cuts()) {
            Shape shape = shapes.stream()
                    .filter(s ->
                            s.outline.equals(cut.outline()) && s.pair == cut.pair() && s.foldable == cut.foldable())
                    .findFirst()
                    .orElseGet(() -> {
                        Shape made = new Shape(cut.outline(), cut.pair(), cut.foldable(), new ArrayList<>());
                        shapes.add(made);
                        return made;
                    });
            for (int copy = 1; copy <= cut.count(); copy++) {
                shape.copies.add(new Copy(cut.name(), copy));
            }
        }
        return shapes;
    }

    private Optional<Lay> throughBothLayers() {
        List<PlacedPiece> placed = new ArrayList<>();
        Optional<Double> pairsEnd = addPairs(shapes, usableWidthCm / 2, 0, placed);
        if (pairsEnd.isEmpty()) {
            return Optional.empty();
        }
        double end = pairsEnd.get();
        for (Shape shape : shapes) {
            if (shape.copies.size() % 2 == 1) {
                if (!canLieOnFold(shape)) {
                    return Optional.empty();
                }
                end = addOnFold(shape, shape.copies.get(shape.copies.size() - 1), end, placed);
            }
        }
        return Optional.of(new Lay(end, placed));
    }

    private Optional<Lay> widestAlongTheFold() {
        Shape widest = shapes.stream()
                .max(Comparator.comparingDouble(s -> s.outline.widthCm()))
                .orElseThrow();
        List<Shape> others = shapes.stream().filter(s -> s != widest).toList();
        if (!canLieOnFold(widest) || others.stream().anyMatch(s -> s.copies.size() % 2 == 1)) {
            return Optional.empty();
        }
        List<PlacedPiece> placed = new ArrayList<>();
        double end = 0;
        for (Copy copy : widest.copies) {
            end = addOnFold(widest, copy, end, placed);
        }
        double besideCm = (usableWidthCm - widest.outline.widthCm()) / 2;
        boolean fitBeside = others.stream().allMatch(s -> s.outline.widthCm() <= besideCm);
        Optional<Double> othersEnd =
                fitBeside ? addPairs(others, besideCm, 0, placed) : addPairs(others, usableWidthCm / 2, end, placed);
        double foldEnd = end;
        return othersEnd.map(last -> new Lay(Math.max(foldEnd, last), placed));
    }

    private boolean canLieOnFold(Shape shape) {
        return shape.foldable && shape.outline.widthCm() <= usableWidthCm + TOUCH_CM;
    }

    /** Lays all pairs in a strip beside the selvedges, from a line on; gives where they end. */
    private Optional<Double> addPairs(List<Shape> laid, double stripCm, double fromCm, List<PlacedPiece> placed) {
        List<Shape> paired = laid.stream().filter(s -> s.copies.size() > 1).toList();
        if (paired.isEmpty()) {
            return Optional.of(fromCm);
        }
        if (paired.stream().anyMatch(s -> s.outline.widthCm() > stripCm + TOUCH_CM)) {
            return Optional.empty();
        }
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < paired.size(); i++) {
            Shape shape = paired.get(i);
            pieces.add(new Piece(Integer.toString(i), shape.outline, shape.copies.size() / 2, !nap, false, false));
        }
        Layout layout = search.layout(Strip.ofWidth(stripCm), pieces);
        for (Placement at : layout.placements()) {
            Shape shape = paired.get(Integer.parseInt(at.piece()));
            addPair(shape, at, fromCm, placed);
        }
        return Optional.of(fromCm + layout.lengthCm());
    }

    private void addPair(Shape shape, Placement at, double fromCm, List<PlacedPiece> placed) {
        Copy lower = shape.copies.get(2 * at.copy() - 2);
        Copy upper = shape.copies.get(2 * at.copy() - 1);
        double y = fromCm + at.yCm();
        placed.add(lying(shape.outline, lower, at.xCm(), y, at.turned(), false));
        placed.add(
                lying(shape.outline, upper, usableWidthCm - at.xCm() - shape.outline.widthCm(), y, at.turned(), true));
    }

    private double addOnFold(Shape shape, Copy copy, double fromCm, List<PlacedPiece> placed) {
        double x = (usableWidthCm - shape.outline.widthCm()) / 2;
        placed.add(lying(shape.outline, copy, x, fromCm, false, false));
        return fromCm + shape.outline.heightCm();
    }

    private static PlacedPiece lying(
            Outline outline, Copy copy, double xCm, double yCm, boolean turned, boolean mirrored) {
        Outline lying = outline.lying(turned, mirrored, xCm, yCm);
        return new PlacedPiece(copy.name, copy.number, xCm, yCm, turned, mirrored, lying.points());
    }
}
