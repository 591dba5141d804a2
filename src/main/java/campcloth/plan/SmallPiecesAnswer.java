package campcloth.plan;

import campcloth.figure.Refused;
import campcloth.layout.Effort;
import java.util.List;
import java.util.Optional;

/** What the small pieces of an order take should they be cut from the same cloth: first from the offcuts, else laid with all. */
final class SmallPiecesAnswer {

    private static final Search QUICK = Search.of(new Effort(0.05, 1));
    private static final int MOST_PIECES_TO_TRY = 60;

    private SmallPiecesAnswer() {}

    /** Empty where the order has no small pieces. */
    static Optional<SmallPieces> of(CuttingOrder order, CutPieces pieces, CuttingPlanner.Laid laid) {
        List<CutPieces.Cut> small = pieces.smallCuts();
        return small.isEmpty() ? Optional.empty() : Optional.of(answer(order, pieces, laid.chosen(), small));
    }

    private static SmallPieces answer(CuttingOrder order, CutPieces pieces, Lay lay, List<CutPieces.Cut> small) {
        List<String> names = small.stream()
                .map(cut -> cut.count() == 1 ? cut.name() : cut.count() + " x " + cut.name())
                .toList();
        int copies = lay.pieces().size()
                + small.stream().mapToInt(CutPieces.Cut::count).sum();
        if (copies > MOST_PIECES_TO_TRY) {
            return new SmallPieces(names, lay.lengthCm(), Optional.empty(), Optional.empty(), false, List.of());
        }
        Optional<List<PlacedPiece>> offcuts = Offcuts.hold(order.cloth().usableWidthCm(), lay, small);
        Optional<Double> withCm = offcuts.isPresent() ? Optional.of(lay.lengthCm()) : laidWith(order, pieces, lay);
        return new SmallPieces(
                names,
                lay.lengthCm(),
                withCm,
                withCm.map(order::buyLengthCm),
                offcuts.isPresent(),
                offcuts.orElse(List.of()));
    }

    /** Net length of all pieces laid together, never below that of the layout without them. */
    private static Optional<Double> laidWith(CuttingOrder order, CutPieces pieces, Lay lay) {
        try {
            CutPieces all = pieces.withSmallPieces();
            return TooNarrow.isTooNarrow(order, all)
                    ? Optional.empty()
                    : Optional.of(Math.max(
                            lay.lengthCm(),
                            CuttingPlanner.laid(order, all, QUICK).chosen().lengthCm()));
        } catch (Refused notPossible) {
            return Optional.empty();
        }
    }
}
