package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;

/**
 * How much bast fibre (flax, hemp, jute and their like) scratches, 0 for none to 1 for the worst sackcloth: share of mass times
 * a roughness by fibre times what the finish leaves of it. The order (flax before hemp before ramie before jute; softer with
 * each wash) is common knowledge of the trade, the numbers are project choices. It is milder than prickle and wears off: never
 * to be added to the percentage of coarse ends.
 */
final class BastRoughness {

    private static final double UNLISTED = 0.7;

    private BastRoughness() {}

    static double of(Cloth cloth) {
        double rough = 0;
        for (Blend.Share share : cloth.blend().shares()) {
            if (FibreKind.of(share.fibre()) == FibreKind.BAST) {
                rough += share.percent() / 100 * asSpun(share.fibre());
            }
        }
        return Math.min(1, rough * left(cloth.finish()));
    }

    private static double asSpun(Fibre fibre) {
        return switch (fibre.key()) {
            case "flax", "linen" -> 0.4;
            case "hemp", "true hemp", "nettle" -> 0.5;
            case "ramie" -> 0.7;
            case "jute" -> 0.9;
            case "sisal", "coir", "abaca" -> 1;
            default -> UNLISTED;
        };
    }

    private static double left(Finish finish) {
        return switch (finish) {
            case WASHED -> 0.6;
            case MERCERISED -> 0.6;
            case CALENDERED, PRESHRUNK -> 0.8;
            case BRUSHED -> 0.9;
            case NONE, FULLED, WAXED, COATED -> 1;
        };
    }
}
