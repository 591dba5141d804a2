package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;

/**
 * How the threads of a fibre lie in a cloth and what that does to the holes between them, against threads of cotton. All
 * numbers are project choices.
 *
 * <p>Bast threads are round and stiff and keep their holes; threads of filament, or of spun synthetic, lie flat and even and
 * close them. Light silk is filament, set openly; heavy silk is mostly spun, and noil and raw silk lie open: the weight of silk
 * tells nothing about its cover. Jute and the leaf fibres are spun as bundles, never as single fibres: what the air meets is the bundle. Ramie and nettle
 * have broad, flattened cells, whose width says too much.
 */
final class Threads {

    private static final double COTTON = 1;
    private static final double STIFF = 1.5;
    private static final double EVEN = 0.5;
    private static final double FLAT = 0.25;
    private static final double SILK_SPUN_OR_FILAMENT = 1.5;
    private static final double SILK_FILAMENT = 0.75;
    private static final double BUNDLE = 3;
    private static final double FLATTENED = 0.7;

    private Threads() {}

    /** Whether air goes past the threads of a weave, rather than through felted, piled or looped fibre. */
    static boolean lieOpen(Cloth cloth) {
        return isWoven(cloth.weave()) && !BulkDensity.isFulled(cloth);
    }

    /** How much more the holes let through than those between cotton threads, shares of mass as weights. */
    static double openness(Cloth cloth) {
        if (BulkDensity.isFulled(cloth)) {
            return COTTON;
        }
        double sum = 0;
        for (Blend.Share share : cloth.blend().shares()) {
            sum += share.percent() / 100 * of(share.fibre(), cloth.weave());
        }
        return sum;
    }

    /** Diameter that the air meets over the width that tables give for a single fibre. */
    static double hydraulicOverWidth(Fibre fibre) {
        return switch (fibre.key()) {
            case "jute", "sisal", "henequen", "maguey", "abaca", "alfa", "broom" -> BUNDLE;
            case "ramie", "nettle" -> FLATTENED;
            default -> 1;
        };
    }

    private static double of(Fibre fibre, Weave weave) {
        boolean woven = isWoven(weave);
        boolean open = weave == Weave.OPEN_PLAIN;
        return switch (FibreKind.of(fibre)) {
            case BAST -> woven ? STIFF : COTTON;
            case SYNTHETIC, ACETATE -> !woven || open ? COTTON : Filament.presumed(fibre, weave) ? FLAT : EVEN;
            case SILK -> !woven || open ? COTTON : isClose(weave) ? SILK_FILAMENT : SILK_SPUN_OR_FILAMENT;
            case ELASTIC, MINERAL -> open ? COTTON : EVEN;
            case COTTON, REGENERATED, HAIR, UNNAMED -> COTTON;
        };
    }

    private static boolean isClose(Weave weave) {
        return weave == Weave.SATIN || weave == Weave.TIGHT_PLAIN;
    }

    private static boolean isWoven(Weave weave) {
        return switch (weave) {
            case OPEN_PLAIN, PLAIN, TIGHT_PLAIN, TWILL, SATIN -> true;
            case PILE, JERSEY, FLEECE, FUR, FELT -> false;
        };
    }
}
