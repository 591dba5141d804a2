package campcloth.cloth;

import campcloth.fibre.Blend;

/**
 * Shrinkage in the first wash where nobody measured it, percent, positive where the cloth becomes shorter (the opposite sign of
 * ISO 5077). Relaxation in a wash that suits the fibre: by hand for wool. Hair that was not fulled felts on and on in a
 * machine, to 30 % and more; that is not in these figures, so whoever shows them says "by hand".
 *
 * <p>By kind of fibre, warp and weft, shares of mass as weights; blends with {@value #SYNTHETIC_HOLDS_FROM} % or more of
 * heat-set synthetics shrink {@value #HELD} times as much (project choice). Weave and finish act as factors. The base figures
 * are trade tables from memory: cotton 6 / 2.5, softened flax 0 to 3, loomstate flax 4 to 10, viscose 4 to 10, wool washed by hand 3
 * to 8 / 2 to 6, fulled wool 1 to 3, synthetics 0 to 1.5. Elastane draws the weft in by more than its small share says. The value is never below 0; only
 * knits may grow in width, which the lower end shows.
 */
final class Shrinkage {

    static final String SOURCE = "estimate-shrinkage";

    private static final double SYNTHETIC_HOLDS_FROM = 35;
    private static final double HELD = 0.7;
    private static final Span ELASTIC_PULL = new Span(0, 2.5, 5);
    private static final Span FULLED_HAIR = new Span(0.5, 2, 4);

    private Shrinkage() {}

    static Span warpPercent(Cloth cloth) {
        return blended(cloth, true).times(weaveFactor(cloth)).times(finishFactor(cloth.finish()));
    }

    static Span weftPercent(Cloth cloth) {
        Span woven = blended(cloth, false).times(weaveFactor(cloth));
        if (!cloth.weave().isKnit() && (cloth.stretch() || FibreKind.percentIn(cloth.blend(), FibreKind.ELASTIC) > 0)) {
            woven = woven.plus(ELASTIC_PULL);
        }
        Span finished = woven.times(finishFactor(cloth.finish()));
        return cloth.weave() == Weave.JERSEY ? new Span(finished.low() - 3, finished.mid(), finished.high()) : finished;
    }

    private static Span blended(Cloth cloth, boolean warp) {
        Span sum = Span.exactly(0);
        double heatSet = 0;
        for (Blend.Share share : cloth.blend().shares()) {
            FibreKind kind = FibreKind.of(share.fibre());
            boolean fulled = kind == FibreKind.HAIR && cloth.finish() == Finish.FULLED;
            Span own = fulled ? FULLED_HAIR : warp ? warpOf(share, kind) : weftOf(share, kind);
            sum = sum.plus(own.times(share.percent() / 100));
            heatSet += kind.isHeatSetSynthetic() ? share.percent() : 0;
        }
        return heatSet >= SYNTHETIC_HOLDS_FROM ? sum.times(HELD) : sum;
    }

    private static Span warpOf(Blend.Share share, FibreKind kind) {
        return switch (kind) {
            case COTTON -> new Span(2, 5.5, 10);
            case BAST -> share.fibre().key().equals("hemp") ? new Span(2, 4.5, 8) : new Span(2, 6, 10);
            case REGENERATED -> slowSwelling(share) ? new Span(2, 3.5, 6) : new Span(3, 7, 11);
            case SILK -> new Span(1, 3, 10);
            case HAIR -> new Span(2, 4.5, 8);
            case ACETATE -> new Span(0, 1.5, 3);
            case ELASTIC -> new Span(0, 3, 6);
            case SYNTHETIC -> new Span(0, 0.8, 2.5);
            case MINERAL -> new Span(0, 0.1, 0.5);
            case UNNAMED -> new Span(0, 5, 14);
        };
    }

    private static Span weftOf(Blend.Share share, FibreKind kind) {
        return switch (kind) {
            case COTTON -> new Span(0, 2.5, 6);
            case BAST -> new Span(1, 3.5, 6);
            case REGENERATED -> slowSwelling(share) ? new Span(1, 2, 4) : new Span(1, 4, 8);
            case SILK -> new Span(0, 1.5, 3);
            case HAIR -> new Span(1, 3, 6);
            case ACETATE -> new Span(0, 1, 2);
            case ELASTIC -> new Span(0, 5, 10);
            case SYNTHETIC -> new Span(0, 0.5, 2);
            case MINERAL -> new Span(0, 0.1, 0.5);
            case UNNAMED -> new Span(-1, 3, 12);
        };
    }

    /** Regenerated fibres that swell less in water than viscose. */
    private static boolean slowSwelling(Blend.Share share) {
        return share.fibre().key().equals("modal") || share.fibre().key().equals("lyocell");
    }

    private static double weaveFactor(Cloth cloth) {
        return switch (cloth.weave()) {
            case OPEN_PLAIN -> 1.2;
            case PLAIN, TIGHT_PLAIN, SATIN, FLEECE, FUR, FELT -> 1;
            case TWILL, PILE -> 0.85;
            case JERSEY -> BulkDensity.isHair(cloth) ? 1.1 : 1.3;
        };
    }

    private static Span finishFactor(Finish finish) {
        return switch (finish) {
            case NONE, FULLED -> Span.exactly(1);
            case BRUSHED, CALENDERED -> new Span(0.9, 1, 1.2);
            case WASHED -> new Span(0.05, 0.3, 0.6);
            case PRESHRUNK -> new Span(0, 0.25, 0.6);
            case MERCERISED -> new Span(0.2, 0.45, 0.8);
            case WAXED, COATED -> new Span(0, 0.4, 1);
        };
    }
}
