package campcloth.advice;

import java.util.List;
import java.util.Optional;

/**
 * What to wear besides where no cloth alone is warm enough.
 *
 * @param clothId the best ranked cloth, with which the layers are reckoned
 * @param spell where most insulation is missing with it
 * @param gapClo what is missing there as worn
 * @param mustAddClo garment insulation I_clu to add so that nothing is missing in any spell; empty where 3 clo are too little
 * @param base garments beneath it or on legs, feet and hands, each on top of those before
 * @param outer garments over it, each on top of those before
 * @param pair two cloths for a hot day and a cold night; empty where there is no such day or no such cloth
 * @param because in plain words
 */
public record Layers(
        String clothId,
        String spell,
        double gapClo,
        Optional<Double> mustAddClo,
        List<AddedLayer> base,
        List<AddedLayer> outer,
        Optional<LayerPair> pair,
        String because) {

    public Layers {
        base = List.copyOf(base);
        outer = List.copyOf(outer);
    }
}
