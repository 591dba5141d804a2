package campcloth.rest;

import campcloth.advice.AddedLayer;
import campcloth.advice.Closes;
import campcloth.advice.LayerPair;
import campcloth.advice.Layers;
import campcloth.cloth.OutfitPart.Kind;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What to wear besides where no cloth that may be chosen is warm enough alone. */
@Schema(name = "Layers")
record LayersBody(
        @Schema(description = "insulation missing as worn with the best ranked cloth, clo")
        double gapClo,

        @Schema(description = "the spell in which most is missing")
        String spell,

        @Schema(description = "id of the best ranked cloth, with which the layers are reckoned")
        String cloth,

        @Schema(
                description =
                        "garment insulation I_clu to add so that nothing is missing; null where 3 clo are too little")
        @Nullable
        Double mustAddClo,

        @Schema(description = "garments beneath, each on top of those before")
        List<LayerBody> base,

        @Schema(description = "garments over it, each on top of those before")
        List<LayerBody> outer,

        @Schema(description = "two cloths for a hot day and a cold night; null where there is no such day or cloth")
        @Nullable
        PairBody pair,

        String because) {

    /** A garment to put on besides. */
    @Schema(name = "AddedLayer")
    record LayerBody(
            @Schema(description = "what kind of part of an outfit it is")
            Kind kind,

            String name,

            @Schema(description = "insulation of all that is then worn of the kind; tell it so in an outfit")
            double insulationClo,

            @Schema(description = "how much of that is more than before")
            double addsClo,

            @Schema(description = "what is then missing in the coldest spell; 0 where nothing is")
            double gapClo,

            Closes closes) {

        static LayerBody of(AddedLayer layer) {
            return new LayerBody(
                    layer.kind(),
                    layer.name(),
                    Rounded.to(layer.insulationClo(), 2),
                    Rounded.to(layer.addsClo(), 2),
                    missing(layer.gapClo()),
                    layer.closes());
        }
    }

    /** Two cloths, for the garment by day and for a cloak over it in the cold. */
    @Schema(name = "LayerPair")
    record PairBody(
            @Schema(description = "id of the garment's cloth")
            String garment,

            @Schema(description = "id of the cloak's cloth") String cloak,

            @Schema(description = "skin wettedness in the hot spells over the comfortable one")
            double heat,

            @Schema(description = "what is missing in the cold spells with the cloak; 0 where nothing is")
            double gapClo,

            Closes closes,
            String because) {

        static PairBody of(LayerPair pair) {
            return new PairBody(
                    pair.garmentId(),
                    pair.cloakId(),
                    Rounded.to(pair.heat(), 2),
                    missing(pair.gapClo()),
                    pair.closes(),
                    pair.because());
        }
    }

    static LayersBody of(Layers layers) {
        return new LayersBody(
                missing(layers.gapClo()),
                layers.spell(),
                layers.clothId(),
                layers.mustAddClo().map(clo -> Rounded.to(clo, 2)).orElse(null),
                layers.base().stream().map(LayerBody::of).toList(),
                layers.outer().stream().map(LayerBody::of).toList(),
                layers.pair().map(PairBody::of).orElse(null),
                layers.because());
    }

    private static double missing(double clo) {
        return Rounded.to(Math.max(0, clo), 2);
    }
}
