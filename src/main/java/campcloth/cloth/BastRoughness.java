package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.figure.Figure;

/**
 * How much bast and leaf fibre (flax, hemp, jute, sisal and their like) scratches, 0 for none to 1 for sackcloth that nobody
 * wears on the skin: share of mass times a roughness by fibre, weight and finish.
 *
 * <p>New cloth lies between the fibre's two ends, that of thin cloth (up to {@value #LIGHT_GSM} g/m2) and that of heavy, whose
 * threads are coarser (from {@value #HEAVY_GSM} g/m2), straight between: flax 0.3 to 0.5, hemp 0.5 to 0.6, ramie 0.6 to 0.8,
 * jute 0.9 to 1, sisal, coir and abaca 1. Washing takes more than half of it off flax and its kin, little off jute and the leaf
 * fibres, which are bundles that stay stiff. The order is common knowledge of the trade (common practice, no source); the scale
 * and all numbers are project choices. It is another thing than prickle: never to be added to the percentage of coarse ends.
 */
final class BastRoughness {

    private static final double LIGHT_GSM = 100;
    private static final double HEAVY_GSM = 350;
    /** Where nobody knows the weight. */
    private static final double USUAL_GSM = 200;

    private static final Span UNLISTED = new Span(0.6, 0.7, 0.8);

    private BastRoughness() {}

    static double of(Cloth cloth) {
        double rough = 0;
        for (Blend.Share share : cloth.blend().shares()) {
            if (FibreKind.of(share.fibre()) == FibreKind.BAST) {
                rough += share.percent() / 100 * asNew(share.fibre(), coarseness(cloth)) * left(cloth, share.fibre());
            }
        }
        return Math.min(1, rough);
    }

    /** Where a cloth lies between light and heavy, 0 to 1. */
    private static double coarseness(Cloth cloth) {
        double gsm = cloth.figure(Property.WEIGHT_GSM).map(Figure::value).orElse(USUAL_GSM);
        return Math.max(0, Math.min(1, (gsm - LIGHT_GSM) / (HEAVY_GSM - LIGHT_GSM)));
    }

    private static double asNew(Fibre fibre, double coarseness) {
        Span ends = switch (fibre.key()) {
            case "flax", "linen" -> new Span(0.3, 0.4, 0.5);
            case "hemp", "true hemp", "nettle" -> new Span(0.5, 0.55, 0.6);
            case "ramie" -> new Span(0.6, 0.7, 0.8);
            case "jute" -> new Span(0.9, 0.95, 1);
            case "sisal", "henequen", "maguey", "coir", "abaca" -> Span.exactly(1);
            default -> UNLISTED;
        };
        return ends.low() + coarseness * (ends.high() - ends.low());
    }

    private static double left(Cloth cloth, Fibre fibre) {
        boolean staysStiff = switch (fibre.key()) {
            case "jute", "sisal", "henequen", "maguey", "coir", "abaca" -> true;
            default -> false;
        };
        return switch (cloth.finish()) {
            case WASHED -> staysStiff ? 0.9 : 0.4;
            case MERCERISED -> staysStiff ? 0.9 : 0.6;
            case CALENDERED, PRESHRUNK -> staysStiff ? 1 : 0.8;
            case BRUSHED -> staysStiff ? 1 : 0.9;
            case NONE, FULLED, WAXED, COATED -> 1;
        };
    }
}
