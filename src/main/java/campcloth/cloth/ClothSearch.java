package campcloth.cloth;

import java.util.Optional;

/**
 * What to look for in the catalogue; everything that is empty does not narrow the search.
 *
 * @param text words that the name or note contains
 * @param fibre key of a fibre that the blend contains
 * @param minWeightGsm least mass per area, g/m2
 * @param maxWeightGsm greatest mass per area, g/m2
 */
public record ClothSearch(
        Optional<String> text, Optional<String> fibre, Optional<Double> minWeightGsm, Optional<Double> maxWeightGsm) {

    /** Looks for everything. */
    public static final ClothSearch EVERYTHING =
            new ClothSearch(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
