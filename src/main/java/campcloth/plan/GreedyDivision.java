package campcloth.plan;

import campcloth.layout.AtHand;
import campcloth.layout.Effort;
import campcloth.layout.Layout;
import campcloth.layout.Nesting;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Placement;
import campcloth.layout.Strip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The plain way to use up lengths at hand: on each length, the longest first, the largest pieces first, each that still finds
 * a place; the rest on cloth to buy, with all the search's means. Of 60 drawn orders it leaves less to buy than the search over
 * all lengths at once in 6, more in 16.
 */
final class GreedyDivision {

    private static final double TOUCH_CM = 1e-6;
    private static final Effort TRY = new Effort(0.01, 1);
    private static final Effort REST = new Effort(0.1, 1);
    private static final int MOST_PIECES_TO_TRY = 60;

    /** One copy of a piece, drawn as it has to be cut. */
    private record Copy(String name, int number, boolean mirrored, Outline outline) {}

    private final CuttingOrder order;

    private GreedyDivision(CuttingOrder order) {
        this.order = order;
    }

    /** Empty where the pieces are too many to try. */
    static Optional<SeveralLengths> of(CuttingOrder order, CutPieces pieces) {
        List<Copy> copies = copies(pieces);
        return copies.size() > MOST_PIECES_TO_TRY
                ? Optional.empty()
                : Optional.of(new GreedyDivision(order).divided(copies));
    }

    private static List<Copy> copies(CutPieces pieces) {
        List<Copy> copies = new ArrayList<>();
        for (CutPieces.Cut cut : pieces.cuts()) {
            for (int number = 1; number <= cut.count(); number++) {
                boolean mirrored = cut.pair() && number % 2 == 0;
                copies.add(new Copy(
                        cut.name(), number, mirrored, mirrored ? cut.outline().mirrored() : cut.outline()));
            }
        }
        copies.sort(Comparator.comparingDouble(copy -> -copy.outline.areaCm2()));
        return copies;
    }

    private SeveralLengths divided(List<Copy> copies) {
        List<Copy> left = new ArrayList<>(copies);
        List<AtHand> atHand = order.particulars().atHand();
        List<SeveralLengths.OnLength> lengths = new ArrayList<>();
        atHand.forEach(none -> lengths.add(new SeveralLengths.OnLength(0, 0, 0, List.of())));
        List<Integer> longestFirst = new ArrayList<>();
        for (int i = 0; i < atHand.size(); i++) {
            longestFirst.add(i);
        }
        longestFirst.sort(Comparator.comparingDouble(i -> -atHand.get(i).lengthCm()));
        for (int i : longestFirst) {
            lengths.set(i, onLength(atHand.get(i), i + 1, left));
        }
        if (left.isEmpty()) {
            return new SeveralLengths(lengths, List.of(), 0, 0, Optional.empty());
        }
        Lay bolt = lay(order.cloth().usableWidthCm(), left, REST);
        double buyCm = order.buyLengthCm(bolt.lengthCm());
        return new SeveralLengths(
                lengths,
                bolt.pieces(),
                bolt.lengthCm(),
                buyCm,
                order.cloth().price().map(price -> price.times(buyCm / 100)));
    }

    /** Takes what lies on the length away from what is left. */
    private SeveralLengths.OnLength onLength(AtHand atHand, int number, List<Copy> left) {
        double lengthCm = order.cloth().cutLengthCm(atHand.lengthCm());
        double widthCm = LengthsAtHand.widthCm(order.cloth(), atHand);
        List<Copy> chosen = new ArrayList<>();
        Lay best = new Lay(0, List.of());
        Set<Outline> tooLarge = new HashSet<>();
        for (Copy copy : List.copyOf(left)) {
            List<Copy> more = new ArrayList<>(chosen);
            more.add(copy);
            if (tooLarge.contains(copy.outline) || !canLie(more, lengthCm, widthCm)) {
                continue;
            }
            Lay lay = lay(widthCm, more, TRY);
            if (lay.lengthCm() <= lengthCm + TOUCH_CM) {
                chosen = more;
                best = lay;
            } else {
                tooLarge.add(copy.outline);
            }
        }
        left.removeAll(chosen);
        List<PlacedPiece> here = best.pieces().stream()
                .map(piece -> piece.on(Optional.of(number)))
                .toList();
        return new SeveralLengths.OnLength(lengthCm, widthCm, best.lengthCm(), here);
    }

    private static boolean canLie(List<Copy> copies, double lengthCm, double widthCm) {
        Outline last = copies.get(copies.size() - 1).outline;
        double areaCm2 = copies.stream().mapToDouble(c -> c.outline.areaCm2()).sum();
        return last.widthCm() <= widthCm + TOUCH_CM
                && last.heightCm() <= lengthCm + TOUCH_CM
                && areaCm2 <= (lengthCm + TOUCH_CM) * widthCm;
    }

    private Lay lay(double widthCm, List<Copy> copies, Effort effort) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < copies.size(); i++) {
            pieces.add(new Piece(
                    Integer.toString(i),
                    copies.get(i).outline,
                    1,
                    !order.cloth().nap(),
                    false,
                    false));
        }
        Layout layout = Nesting.layout(Strip.ofWidth(widthCm), pieces, effort);
        List<PlacedPiece> placed = layout.placements().stream()
                .map(at -> placed(copies.get(Integer.parseInt(at.piece())), at, layout.outlineOf(at)))
                .toList();
        return new Lay(layout.lengthCm(), placed);
    }

    private static PlacedPiece placed(Copy copy, Placement at, Outline lying) {
        return new PlacedPiece(copy.name, copy.number, at.xCm(), at.yCm(), at.turned(), copy.mirrored, lying.points());
    }
}
