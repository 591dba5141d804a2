package campcloth.cloth;

import campcloth.figure.Range;
import java.util.Optional;

/**
 * What to look for in the catalogue; everything that is empty does not narrow the search.
 *
 * @param text words, all of which stand in the name, the note or the composition
 * @param fibre key of a fibre that the blend contains
 * @param minWeightGsm least mass per area, g/m2
 * @param maxWeightGsm greatest mass per area, g/m2
 */
public record ClothSearch(
        Optional<String> text, Optional<String> fibre, Optional<Double> minWeightGsm, Optional<Double> maxWeightGsm) {

    private static final Range LEAST = new Range("minWeightGsm", 0, 10_000, "g/m2");
    private static final Range MOST = new Range("maxWeightGsm", 0, 10_000, "g/m2");

    public ClothSearch {
        minWeightGsm.ifPresent(LEAST::check);
        maxWeightGsm.ifPresent(MOST::check);
    }

    /** Looks for everything. */
    public static final ClothSearch EVERYTHING =
            new ClothSearch(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
