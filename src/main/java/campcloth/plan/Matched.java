package campcloth.plan;

import java.util.List;
import java.util.Optional;

/**
 * A layout in which the pattern of the cloth matches.
 *
 * @param repeatLengthCm the repeat along the cloth, as it is cut; empty where nothing has to match along it
 * @param repeatWidthCm the same across
 * @param lengthCm cloth that it takes, as it is cut
 * @param buyLengthCm what to buy
 * @param extraCm how much more that is than without matching
 * @param extraCost what that costs, where the price is known
 * @param placements where each piece lies
 * @param lineFromCutCm where the line along that the hems meet first comes, from the cut edge; empty where none repeats along
 *     and in plans of old
 * @param lineFromSelvedgeCm the same across, of the stripe on which their middles lie, from the left edge
 */
public record Matched(
        Optional<Double> repeatLengthCm,
        Optional<Double> repeatWidthCm,
        double lengthCm,
        double buyLengthCm,
        double extraCm,
        Optional<Money> extraCost,
        List<PlacedPiece> placements,
        Optional<Double> lineFromCutCm,
        Optional<Double> lineFromSelvedgeCm) {

    public Matched {
        placements = List.copyOf(placements);
    }
}
