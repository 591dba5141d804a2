package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;

/**
 * Whether a fibre lies in a cloth as endless filament: it then has no ends to prickle, and its threads, hardly twisted, lie
 * flat and close the weave. Labels do not tell. Silk counts as filament; synthetics and acetate do in satin and in tight or
 * open plain weave, where filament is the usual yarn (common practice, no source). Spun silk and tight cloth of staple
 * polyester are taken for filament wrongly; neither prickles.
 */
final class Filament {

    private Filament() {}

    static boolean presumed(Fibre fibre, Weave weave) {
        return switch (FibreKind.of(fibre)) {
            case SILK, ELASTIC, MINERAL -> true;
            case SYNTHETIC, ACETATE -> weave == Weave.SATIN || weave == Weave.TIGHT_PLAIN || weave == Weave.OPEN_PLAIN;
            case COTTON, BAST, REGENERATED, HAIR, UNNAMED -> false;
        };
    }

    /** Share of the cloth's mass that lies as filament, 0 to 1. */
    static double share(Cloth cloth) {
        return cloth.blend().shares().stream()
                        .filter(share -> presumed(share.fibre(), cloth.weave()))
                        .mapToDouble(Blend.Share::percent)
                        .sum()
                / 100;
    }
}
