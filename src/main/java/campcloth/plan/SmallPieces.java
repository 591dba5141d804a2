package campcloth.plan;

import java.util.List;
import java.util.Optional;

/**
 * Facings, bindings and pockets, which may come from scrap, should they be cut from the same cloth.
 *
 * @param pieces what they are
 * @param lengthWithoutCm net length that the layout of all other pieces takes
 * @param lengthWithCm net length with them, as cut; empty where they do not lie on this cloth or are too many to try
 * @param buyLengthWithCm what to buy then
 * @param inOffcuts whether they lie in what the layout given leaves over
 * @param placements where they lie there, beside the pieces of the plan; empty where they do not
 */
public record SmallPieces(
        List<String> pieces,
        double lengthWithoutCm,
        Optional<Double> lengthWithCm,
        Optional<Double> buyLengthWithCm,
        boolean inOffcuts,
        List<PlacedPiece> placements) {

    public SmallPieces {
        pieces = List.copyOf(pieces);
        placements = List.copyOf(placements);
    }
}
