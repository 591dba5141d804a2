package campcloth.cloth;

import campcloth.fibre.FibreFamily;

/**
 * How heavy a cloth is for its thickness, g/cm3: mass per area over thickness at about 0.5 to 1 kPa (ISO 5084).
 *
 * <p>By weave, from memory of the textile literature: tight plain weave 0.45 to 0.58, plain 0.36 to 0.46, open 0.25 to 0.38,
 * twill and satin 0.45 to 0.55, worsted 0.42 to 0.52, woollen 0.25 to 0.35, fulled 0.18 to 0.30, jersey 0.20 to 0.36,
 * fleece 0.07 to 0.12, velvet 0.18 to 0.30, felt 0.15 to 0.30, long pile about 0.02 to 0.06. The name of a weave tells less
 * than those ranges, so their ends are put {@value #HONESTY} times further off (project choice). Cloth with unnamed fibres is
 * wider still. The density of the fibre itself bounds it from above. Jersey alone was moved towards the knits measured in
 * rogak-2021.
 *
 * <p>It does not depend on the weight: thickness estimated from it rises with weight at the same weave.
 */
final class BulkDensity {

    static final String SOURCE = "estimate-bulk-density";

    private static final double HONESTY = 1.2;
    /** Above half hair the ranges of worsted and woollen cloth hold. */
    private static final double HALF = 50;
    /** Denser than this share of the fibre substance no cloth is packed. */
    private static final double DENSEST_SHARE = 0.75;

    /** Woven hair with a raised face. */
    private static final Span WOOLLEN = new Span(0.22, 0.30, 0.36);

    private static final Span FULLED = new Span(0.18, 0.24, 0.30);
    private static final Span FULLED_KNIT = new Span(0.12, 0.17, 0.26);
    /** Ends lifted from the face, as in flannel against muslin. */
    private static final Span LIFTED = new Span(0.45, 0.58, 0.85);

    private static final Span CALENDERED = new Span(1.05, 1.2, 1.35);
    private static final Span FILLED = new Span(1.0, 1.15, 1.4);
    private static final Span FLAT_FILAMENT = new Span(0.85, 1.1, 1.3);

    private BulkDensity() {}

    static Span gCm3(Cloth cloth) {
        Span bulk = isFulled(cloth) ? fulled(cloth.weave()) : asMade(cloth);
        double unnamed = cloth.blend().percentOf(FibreFamily.UNNAMED) / 100;
        return bulk.widened(HONESTY * (1 + 0.5 * unnamed))
                .clampedTo(0.01, DENSEST_SHARE * cloth.blend().densityGCm3());
    }

    /** Whether milling closed the cloth; it felts hair only. */
    static boolean isFulled(Cloth cloth) {
        return cloth.finish() == Finish.FULLED && !lofty(cloth.weave()) && isHair(cloth);
    }

    static boolean isHair(Cloth cloth) {
        return FibreKind.percentIn(cloth.blend(), FibreKind.HAIR) >= HALF;
    }

    private static Span fulled(Weave weave) {
        return weave.isKnit() ? FULLED_KNIT : FULLED;
    }

    private static Span asMade(Cloth cloth) {
        boolean lifted = isLifted(cloth) && !lofty(cloth.weave());
        boolean woollen = lifted && isHair(cloth) && !cloth.weave().isKnit();
        Span bulk = woollen ? WOOLLEN : isHair(cloth) ? ofHair(cloth.weave()) : ofWeave(cloth.weave());
        if (Filament.share(cloth) * 100 >= HALF) {
            bulk = bulk.times(FLAT_FILAMENT);
        }
        if (lifted && !woollen) {
            bulk = bulk.times(LIFTED);
        }
        return switch (cloth.finish()) {
            case CALENDERED -> bulk.times(CALENDERED);
            case WAXED, COATED -> bulk.times(FILLED);
            case NONE, WASHED, PRESHRUNK, MERCERISED, BRUSHED, FULLED -> bulk;
        };
    }

    /** Whether the face was raised. */
    static boolean isLifted(Cloth cloth) {
        return cloth.surface() == Surface.RAISED || cloth.finish() == Finish.BRUSHED;
    }

    /** Weaves whose ends stand out already. */
    private static boolean lofty(Weave weave) {
        return switch (weave) {
            case PILE, FLEECE, FUR, FELT -> true;
            case OPEN_PLAIN, PLAIN, TIGHT_PLAIN, TWILL, SATIN, JERSEY -> false;
        };
    }

    private static Span ofWeave(Weave weave) {
        return switch (weave) {
            case OPEN_PLAIN -> new Span(0.25, 0.32, 0.38);
            case PLAIN -> new Span(0.36, 0.41, 0.46);
            case TIGHT_PLAIN -> new Span(0.45, 0.50, 0.58);
            case TWILL, SATIN -> new Span(0.45, 0.50, 0.55);
            case PILE -> new Span(0.18, 0.24, 0.30);
            case JERSEY -> new Span(0.20, 0.30, 0.36);
            case FLEECE -> new Span(0.07, 0.10, 0.12);
            case FUR -> new Span(0.02, 0.036, 0.06);
            case FELT -> new Span(0.15, 0.20, 0.30);
        };
    }

    /** The name of a weave does not tell worsted from woollen where the face is plain: both are in the interval. */
    private static Span ofHair(Weave weave) {
        return switch (weave) {
            case OPEN_PLAIN -> new Span(0.20, 0.28, 0.36);
            case PLAIN -> new Span(0.25, 0.34, 0.48);
            case TIGHT_PLAIN, SATIN -> new Span(0.35, 0.46, 0.54);
            case TWILL -> new Span(0.27, 0.42, 0.52);
            case PILE, JERSEY, FLEECE, FUR, FELT -> ofWeave(weave);
        };
    }
}
