package campcloth.cloth;

/**
 * Mass per area of a cloth of which only the weave is known, g/m2: a last resort that spans what the trade sells under the
 * word (voile 50 to 80, shirting 100 to 140, drill 200 to 320, canvas 280 to 500, melton 400 to 700 and the like; from
 * memory). Woven hair is heavier than woven plant fibre, fulled hair heavier still.
 */
final class UsualWeight {

    static final String SOURCE = "estimate-usual-weight";

    private static final Span FULLED = new Span(250, 480, 800);
    private static final Span HEAVIER_IN_HAIR = new Span(1, 1.4, 1.6);

    private UsualWeight() {}

    static Span gsm(Cloth cloth) {
        if (BulkDensity.isFulled(cloth)) {
            return FULLED;
        }
        Span usual = ofWeave(cloth.weave());
        return BulkDensity.isHair(cloth) ? usual.times(HEAVIER_IN_HAIR) : usual;
    }

    private static Span ofWeave(Weave weave) {
        return switch (weave) {
            case OPEN_PLAIN -> new Span(40, 110, 400);
            case PLAIN -> new Span(60, 180, 400);
            case TIGHT_PLAIN -> new Span(60, 200, 500);
            case TWILL -> new Span(140, 270, 550);
            case SATIN -> new Span(60, 140, 380);
            case PILE -> new Span(200, 300, 500);
            case JERSEY -> new Span(100, 180, 350);
            case FLEECE -> new Span(140, 250, 420);
            case FUR -> new Span(300, 600, 1100);
            case FELT -> new Span(120, 300, 900);
        };
    }
}
