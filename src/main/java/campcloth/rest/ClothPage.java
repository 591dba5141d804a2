package campcloth.rest;

import campcloth.cloth.ClothFacets;
import campcloth.cloth.Cloths;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One page of the catalogue, with what to narrow the search by. */
record ClothPage(
        List<ClothBody> cloths,
        int page,
        int size,
        long total,

        @Schema(description = "no cloth has all the words; these are only named much alike, the 200 nearest at most")
        boolean nearMatches,

        Facets facets) {

    /** What the result can be narrowed by. */
    @Schema(
            name = "ClothFacets",
            description = "Each facet counts the cloths that match all of the search but the facet's own values")
    record Facets(Facet fibre, Facet weightClass, Facet season, Facet fireGrade, Prices pricePerMetre) {

        static Facets of(ClothFacets facets) {
            return new Facets(
                    Facet.of(facets.fibre()),
                    Facet.of(facets.weightClass()),
                    Facet.of(facets.season()),
                    Facet.of(facets.fireGrade()),
                    new Prices(
                            facets.pricePerMetre().least().orElse(null),
                            facets.pricePerMetre().most().orElse(null),
                            facets.pricePerMetre().without()));
        }
    }

    /** The values of one facet. */
    @Schema(name = "ClothFacet")
    record Facet(
            List<ValueCount> values,

            @Schema(description = "number of cloths with none of the values")
            long without) {

        static Facet of(ClothFacets.Facet facet) {
            return new Facet(
                    facet.values().stream()
                            .map(count -> new ValueCount(count.value(), count.count()))
                            .toList(),
                    facet.without());
        }
    }

    /** A value of a facet. */
    @Schema(name = "ClothFacetValue")
    record ValueCount(String value, long count) {}

    /** The prices of the result, EUR/m. */
    @Schema(name = "ClothPrices")
    record Prices(
            @Nullable Double least,
            @Nullable Double most,

            @Schema(description = "number of cloths without a price")
            long without) {}

    static ClothPage of(Cloths.Page found, int page, int size) {
        return new ClothPage(
                found.cloths().stream().map(ClothBody::of).toList(),
                page,
                size,
                found.total(),
                found.nearMatches(),
                Facets.of(found.facets()));
    }
}
