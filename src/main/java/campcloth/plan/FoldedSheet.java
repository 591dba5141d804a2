package campcloth.plan;

import campcloth.layout.ClothEdge;
import campcloth.layout.Outline;
import campcloth.layout.SheetPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pieces as they lie on folded cloth, from where they lie on open cloth. A piece whose middle lies on a fold is half of it; a
 * piece beside a fold has its mirror image in the other layer, and both are one part.
 */
final class FoldedSheet {

    private static final double TOUCH_CM = 1e-6;

    /** The cloth as it lies. */
    record Lying(double widthCm, ClothEdge left, ClothEdge right, List<SheetPart> parts) {}

    private FoldedSheet() {}

    /** Selvedge on selvedge at the left, the fold at the right. */
    static Lying once(List<PlacedPiece> placed, double usableWidthCm) {
        double fold = usableWidthCm / 2;
        List<SheetPart> parts = new ArrayList<>();
        for (PlacedPiece piece : placed) {
            if (Math.abs(middle(piece) - fold) < TOUCH_CM) {
                parts.add(part(placed, piece, SheetPart.Cut.ON_RIGHT_FOLD, 0));
            } else if (middle(piece) < fold) {
                parts.add(both(placed, piece, usableWidthCm));
            }
        }
        return new Lying(fold, ClothEdge.BOTH_SELVEDGES, ClothEdge.fold(fold), parts);
    }

    /** Both selvedges inwards; each fold is the middle of the pieces along it. */
    static Lying twice(List<PlacedPiece> placed, double usableWidthCm) {
        double left = placed.stream().mapToDouble(FoldedSheet::middle).min().orElse(0);
        double right = placed.stream().mapToDouble(FoldedSheet::middle).max().orElse(0);
        boolean one = right - left < TOUCH_CM;
        List<SheetPart> parts = new ArrayList<>();
        for (PlacedPiece piece : placed) {
            boolean onLeft = middle(piece) - left < TOUCH_CM;
            parts.add(part(placed, piece, onLeft ? SheetPart.Cut.ON_LEFT_FOLD : SheetPart.Cut.ON_RIGHT_FOLD, left));
        }
        double end = one ? usableWidthCm : right;
        ClothEdge rightEdge = one ? ClothEdge.SELVEDGE : ClothEdge.fold(usableWidthCm - right);
        return new Lying(end - left, ClothEdge.fold(left), rightEdge, parts);
    }

    private static SheetPart both(List<PlacedPiece> placed, PlacedPiece lower, double usableWidthCm) {
        Optional<PlacedPiece> upper = placed.stream()
                .filter(other -> other != lower
                        && Math.abs(middle(other) + middle(lower) - usableWidthCm) < TOUCH_CM
                        && Math.abs(other.yCm() - lower.yCm()) < TOUCH_CM)
                .findFirst();
        String name = upper.map(twin -> twin.piece().equals(lower.piece())
                        ? lower.piece() + " " + Math.min(lower.copy(), twin.copy()) + " and "
                                + Math.max(lower.copy(), twin.copy())
                        : name(placed, lower) + " and " + name(placed, twin))
                .orElseGet(() -> name(placed, lower));
        return new SheetPart(
                name,
                Outline.of(lower.outlineCm()),
                lower.turned(),
                false,
                upper.isPresent() ? SheetPart.Cut.BOTH_LAYERS : SheetPart.Cut.ONE_LAYER);
    }

    /** A piece by itself, moved to the left by what the fold takes away. */
    static SheetPart part(List<PlacedPiece> placed, PlacedPiece piece, SheetPart.Cut cut, double leftCm) {
        Outline outline = Outline.of(piece.outlineCm());
        return new SheetPart(
                name(placed, piece),
                leftCm == 0 ? outline : outline.movedTo(piece.xCm() - leftCm, piece.yCm()),
                piece.turned(),
                piece.mirrored(),
                cut);
    }

    private static String name(List<PlacedPiece> placed, PlacedPiece piece) {
        boolean alone = placed.stream()
                        .filter(other -> other.piece().equals(piece.piece()))
                        .count()
                == 1;
        return alone ? piece.piece() : piece.piece() + " " + piece.copy();
    }

    private static double middle(PlacedPiece piece) {
        return piece.xCm() + Outline.of(piece.outlineCm()).widthCm() / 2;
    }
}
