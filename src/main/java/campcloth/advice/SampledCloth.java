package campcloth.advice;

import campcloth.advice.sample.Points;
import campcloth.advice.sample.Triangle;
import campcloth.cloth.Cloth;
import campcloth.cloth.Prickle;
import campcloth.cloth.Property;
import campcloth.cloth.Wear;
import campcloth.comfort.Comfort;
import campcloth.comfort.Ensemble;
import campcloth.figure.Figure;
import campcloth.fire.FireJudgement;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A cloth whose figures are drawn from their intervals, each figure by itself ({@link Triangle}). What is sewn in and worn
 * besides stays at its best figures, and so does what fire says.
 */
record SampledCloth(
        Cloth completed, Wear wear, List<Ensemble> ensembles, FireJudgement fire, Prickle prickle, Points points) {

    private static final List<Property> DRAWN = List.of(
            Property.THICKNESS_MM,
            Property.AIR_PERMEABILITY_MM_S,
            Property.VAPOUR_RESISTANCE_M2PA_W,
            Property.WEIGHT_GSM);

    /** What is drawn of each cloth, in plain words. */
    static final String WHAT =
            "Thickness, air permeability, vapour resistance, weight and stiff fibre ends of each cloth: within their intervals, the"
                    + " best value likeliest, each by itself.";

    private static final int DIMENSIONS = DRAWN.size() + 1;

    /** Spreads the hashes of ids, which lie close together, over all seeds; the odd number nearest to 2^64 over the golden section. */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    /** The points of a cloth depend on the seed and its id alone, whatever the cloths beside it. */
    static Points points(String clothId, int samples, long seed) {
        return Points.of(samples, DIMENSIONS, seed + SPREAD * clothId.hashCode());
    }

    /** All that is said of it in one sample, spells as far as {@link Comfort#atBestFigures} tells. */
    Facts facts(int sample, SampledWearer wearer, Comfort comfort, Bounds bounds) {
        Cloth drawn = cloth(sample);
        return new Facts(
                drawn, wear, ensembles, comfort.atBestFigures(drawn, wear), fire, prickle(sample, wearer), bounds);
    }

    private Cloth cloth(int sample) {
        Map<Property, Figure> figures = new EnumMap<>(completed.figures());
        for (int i = 0; i < DRAWN.size(); i++) {
            figures.put(DRAWN.get(i), drawn(completed.required(DRAWN.get(i)), sample, i));
        }
        return completed.with(figures);
    }

    private Prickle prickle(int sample, SampledWearer wearer) {
        Figure coarse = drawn(prickle.coarseEndsPercent(), sample, DRAWN.size());
        return new Prickle(
                Figure.exact(wearer.prickle() * coarse.value(), coarse.basis(), coarse.source()),
                prickle.bastRoughness());
    }

    private Figure drawn(Figure figure, int sample, int dimension) {
        return Figure.exact(Triangle.quantile(figure, points.at(sample, dimension)), figure.basis(), figure.source());
    }
}
