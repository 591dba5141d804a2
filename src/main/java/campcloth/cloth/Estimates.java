package campcloth.cloth;

import campcloth.figure.Figure;
import java.util.function.Function;

/**
 * Estimates for the figures that nobody measured, each with a wide interval and the basis ESTIMATED. What is known stays as it
 * is, whatever its basis, and enters the estimates of the rest.
 *
 * <p>The price is never estimated: nothing about a cloth tells it. A completed cloth has every other {@link Property}.
 *
 * <p>Order: fineness of the fibre, weight and thickness ({@link BulkDensity}), air permeability ({@link KozenyCarman} and
 * holes), water-vapour resistance (diffusion), shrinkage, width. No estimate is made from another estimate's middle alone:
 * each carries the intervals of what it is made from.
 */
public final class Estimates {

    private static final String WIDTH_SOURCE = "estimate-usual-width";

    /** Most dress cloth lies 140 to 150 cm wide, prints and silk 90 to 115 (common practice, no source). */
    private static final Span USUAL_WIDTH_CM = new Span(90, 140, 150);

    private Estimates() {}

    /** The cloth with every property but the price present. */
    public static Cloth complete(Cloth cloth) {
        Gaps gaps = new Gaps(cloth);
        gaps.fill(Property.FIBRE_DIAMETER_UM, c -> Fineness.diameterUm(c, Fineness.leading(c.blend())));
        gaps.fill(Property.FIBRE_DIAMETER_CV_PERCENT, c -> Fineness.variationPercent(c, Fineness.leading(c.blend())));
        gaps.fill(Property.WEIGHT_GSM, Estimates::weight);
        gaps.estimate(Property.THICKNESS_MM, c -> Structure.of(c).thicknessMm(), BulkDensity.SOURCE);
        gaps.estimate(Property.AIR_PERMEABILITY_MM_S, AirPermeability::mmS, AirPermeability.SOURCE);
        gaps.estimate(Property.VAPOUR_RESISTANCE_M2PA_W, VapourResistance::m2PaW, VapourResistance.SOURCE);
        gaps.estimate(Property.SHRINK_WARP_PERCENT, Shrinkage::warpPercent, Shrinkage.SOURCE);
        gaps.estimate(Property.SHRINK_WEFT_PERCENT, Shrinkage::weftPercent, Shrinkage.SOURCE);
        gaps.estimate(Property.WIDTH_CM, c -> USUAL_WIDTH_CM, WIDTH_SOURCE);
        return gaps.filled;
    }

    private static Figure weight(Cloth cloth) {
        String source = cloth.figure(Property.THICKNESS_MM).isPresent() ? BulkDensity.SOURCE : UsualWeight.SOURCE;
        return Structure.of(cloth).weightGsm().asEstimate(Property.WEIGHT_GSM, source);
    }

    /** A cloth as it was given and as far as it is filled. Estimates start from what was given, so nothing counts twice. */
    private static final class Gaps {

        private final Cloth given;
        private Cloth filled;

        private Gaps(Cloth given) {
            this.given = given;
            this.filled = given;
        }

        private void estimate(Property property, Function<Cloth, Span> estimate, String source) {
            fill(property, cloth -> estimate.apply(cloth).asEstimate(property, source));
        }

        private void fill(Property property, Function<Cloth, Figure> estimate) {
            if (given.figure(property).isEmpty()) {
                filled = filled.with(property, estimate.apply(given));
            }
        }
    }
}
