package campcloth.cloth;

import java.util.List;
import java.util.Optional;

/**
 * By what a result can be narrowed further. Each facet counts the cloths that match all of the search but the facet's own values,
 * so that it tells what another choice would give.
 *
 * @param fibre by fibre of the blend; a blend counts once for each of its fibres
 * @param weightClass by class of weight
 * @param season by season that it suits; a cloth counts once for each
 * @param fireGrade by fire grade
 * @param pricePerMetre by price
 */
public record ClothFacets(Facet fibre, Facet weightClass, Facet season, Facet fireGrade, Prices pricePerMetre) {

    /** A value and the number of cloths that have it. */
    public record Count(String value, long count) {}

    /**
     * One facet.
     *
     * @param values the values that occur, most frequent first
     * @param without number of cloths with none of the values
     */
    public record Facet(List<Count> values, long without) {

        public Facet {
            values = List.copyOf(values);
        }
    }

    /**
     * The prices of a result.
     *
     * @param least cheapest, EUR/m; empty where no cloth has a price
     * @param most dearest, EUR/m
     * @param without number of cloths without a price
     */
    public record Prices(Optional<Double> least, Optional<Double> most, long without) {}
}
