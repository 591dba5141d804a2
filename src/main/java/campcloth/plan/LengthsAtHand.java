package campcloth.plan;

import campcloth.layout.AtHand;
import campcloth.layout.Effort;
import campcloth.layout.Nesting;
import campcloth.layout.Strip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Uses up lengths at hand before the bolt, so that least is bought, then few lengths are begun; of the search over all at once
 * and {@link GreedyDivision} the one that leaves less to buy. Every length is laid open; none counts as wider than the cloth.
 */
final class LengthsAtHand {

    private static final Effort EFFORT = new Effort(0.2, 1);
    /** On less nothing is looked for. */
    private static final double LEAST_CM = 1;
    /** So much less to buy is worth beginning more lengths. */
    private static final double WORTH_CM = 0.05;

    private final CuttingOrder order;
    private final ClothToCut cloth;
    private final List<AtHand> given;
    /** Places in the list given of the lengths that are laid on. */
    private final List<Integer> used = new ArrayList<>();

    private LengthsAtHand(CuttingOrder order) {
        this.order = order;
        this.cloth = order.cloth();
        this.given = order.particulars().atHand();
        for (int i = 0; i < given.size(); i++) {
            if (lengthCm(i) >= LEAST_CM && widthCm(i) >= LEAST_CM) {
                used.add(i);
            }
        }
    }

    /** Empty where no lengths are at hand. */
    static Optional<SeveralLengths> of(CuttingOrder order, CutPieces pieces) {
        if (order.particulars().atHand().isEmpty()) {
            return Optional.empty();
        }
        SeveralLengths searched = new LengthsAtHand(order).divided(pieces);
        return GreedyDivision.of(order, pieces)
                .filter(plain -> plain.boltNetCm() < searched.boltNetCm() - WORTH_CM)
                .or(() -> Optional.of(searched));
    }

    private double lengthCm(int place) {
        return cloth.cutLengthCm(given.get(place).lengthCm());
    }

    private double widthCm(int place) {
        return widthCm(cloth, given.get(place));
    }

    /** Between the selvedges, as it is cut. */
    static double widthCm(ClothToCut cloth, AtHand length) {
        return Math.min(
                cloth.usableWidthCm(),
                length.widthCm().map(cloth::usableWidthOfCm).orElse(cloth.usableWidthCm()));
    }

    private SeveralLengths divided(CutPieces pieces) {
        List<AtHand> washed = used.stream()
                .map(i -> new AtHand(lengthCm(i), Optional.of(widthCm(i)), Optional.empty()))
                .toList();
        Strip strip = new Strip(cloth.usableWidthCm(), 0, 0, 0, Optional.empty(), washed);
        Lay lay = Lay.of(Nesting.layout(
                strip, pieces.cuts().stream().map(cut -> cut.piece(cloth.nap())).toList(), EFFORT));
        List<PlacedPiece> placed = lay.pieces().stream()
                .map(piece -> piece.on(piece.atHand().map(number -> used.get(number - 1) + 1)))
                .toList();
        List<SeveralLengths.OnLength> lengths = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            List<PlacedPiece> here = on(placed, Optional.of(i + 1));
            double usedCm = here.stream().mapToDouble(PlacedPiece::endCm).max().orElse(0);
            lengths.add(new SeveralLengths.OnLength(lengthCm(i), widthCm(i), usedCm, here));
        }
        List<PlacedPiece> bolt = on(placed, Optional.empty());
        double buyCm = bolt.isEmpty() ? 0 : order.buyLengthCm(lay.lengthCm());
        return new SeveralLengths(
                lengths,
                bolt,
                bolt.isEmpty() ? 0 : lay.lengthCm(),
                buyCm,
                bolt.isEmpty() ? Optional.empty() : cloth.price().map(price -> price.times(buyCm / 100)));
    }

    private static List<PlacedPiece> on(List<PlacedPiece> placed, Optional<Integer> length) {
        return placed.stream().filter(piece -> piece.atHand().equals(length)).toList();
    }
}
