package campcloth.plan;

import java.util.List;
import java.util.Optional;

/**
 * What a plan tells beyond the cloth itself; plans of the first form have none.
 *
 * @param garments how each line is sewn
 * @param smallPieces facings, bindings and pockets, where there are any
 * @param lengthsAtHand the pieces divided among lengths at hand and the bolt, where there are any
 * @param matched a layout that matches the pattern, where the cloth has one
 * @param rule what the plan saves against the rule of thumb
 */
public record Making(
        List<GarmentWork> garments,
        Optional<SmallPieces> smallPieces,
        Optional<SeveralLengths> lengthsAtHand,
        Optional<Matched> matched,
        RuleSaving rule) {

    public Making {
        garments = List.copyOf(garments);
    }
}
