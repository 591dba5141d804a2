package campcloth.plan;

import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The pieces on cloth whose two selvedges are folded inwards: every piece is cut as a half along one of the two folds, in two
 * columns, each copy, the longest first, in the column that is shorter so far. Given as on the unfolded cloth, where each
 * fold is the middle of its column. Empty where a piece has no axis to fold along or the two columns are wider than the
 * cloth.
 */
final class TwoFoldsLay {

    private static final double TOUCH_CM = 1e-9;

    private record Copy(String name, int number, Outline outline) {}

    /** One fold with the pieces along it. */
    private static final class Column {

        private final List<Copy> copies = new ArrayList<>();
        private double lengthCm;
        private double widthCm;

        private void add(Copy copy) {
            copies.add(copy);
            lengthCm += copy.outline.heightCm();
            widthCm = Math.max(widthCm, copy.outline.widthCm());
        }

        private List<PlacedPiece> placedAround(double foldCm) {
            List<PlacedPiece> placed = new ArrayList<>();
            double y = 0;
            for (Copy copy : copies) {
                double x = foldCm - copy.outline.widthCm() / 2;
                List<Point> lying = copy.outline.movedTo(x, y).points();
                placed.add(new PlacedPiece(copy.name, copy.number, x, y, false, false, lying));
                y += copy.outline.heightCm();
            }
            return placed;
        }
    }

    private TwoFoldsLay() {}

    static Optional<Lay> of(double usableWidthCm, CutPieces pieces) {
        if (pieces.cuts().stream().anyMatch(cut -> !cut.foldable())) {
            return Optional.empty();
        }
        Column left = new Column();
        Column right = new Column();
        for (Copy copy : longestFirst(pieces)) {
            (left.lengthCm <= right.lengthCm ? left : right).add(copy);
        }
        if (left.widthCm + right.widthCm > usableWidthCm + TOUCH_CM) {
            return Optional.empty();
        }
        List<PlacedPiece> placed = new ArrayList<>(left.placedAround(left.widthCm / 2));
        placed.addAll(right.placedAround(usableWidthCm - right.widthCm / 2));
        return Optional.of(new Lay(Math.max(left.lengthCm, right.lengthCm), placed));
    }

    private static List<Copy> longestFirst(CutPieces pieces) {
        List<Copy> copies = new ArrayList<>();
        for (CutPieces.Cut cut : pieces.cuts()) {
            for (int number = 1; number <= cut.count(); number++) {
                copies.add(new Copy(cut.name(), number, cut.outline()));
            }
        }
        copies.sort(Comparator.comparingDouble((Copy c) -> c.outline.heightCm()).reversed());
        return copies;
    }
}
