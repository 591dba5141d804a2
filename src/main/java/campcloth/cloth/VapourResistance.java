package campcloth.cloth;

/**
 * Resistance to water vapour where nobody measured it, m2 Pa/W (ISO 11092, Ret).
 *
 * <p>Diffusion through the still air in the cloth, {@code Ret = 2.18 t tau / e}, t the thickness in mm, e the porosity, tau =
 * 1/sqrt(e) the winding of the way. 2.18 m2 Pa/W for 1 mm of air is {@code t Rv T / (D L)} with Rv = 461.5 J/(kg K), T = 308
 * K, D = 2.7e-5 m2/s and L = 0.672 W h/g. A plate adds edge effects, about times 1.35, and contact, about 0.5 m2 Pa/W (project
 * choices with wide intervals, from the ranges remembered for typical cloths, and wide enough for the polyester knits of
 * ozkan-2023, 1.4 to 1.9); the tips of a long pile hold less still air than
 * they measure in thickness, so less there. Worked example before the plate: 0.45 mm, e = 0.719: 1.6.
 *
 * <p>Below a porosity of {@value #LEAST_POROSITY} the formula would fall where the thickness rises at a given weight; no usual
 * cloth is denser, so the porosity is held there: thicker is never less resistant. Film and wax resist in series with the
 * cloth; what they resist depends on the make (microporous 3 to 13, solid film to over 300), hence an interval that says
 * hardly more than "unknown".
 */
final class VapourResistance {

    static final String SOURCE = "estimate-vapour-diffusion";

    static final double STILL_AIR_M2PA_W_PER_MM = 2.18;

    private static final double LEAST_POROSITY = 0.6;
    private static final double MODEL_ERROR = 1.8;
    private static final Span EDGE = new Span(1.05, 1.35, 2.0);
    private static final Span EDGE_OF_LONG_PILE = new Span(0.6, 1.0, 1.5);
    /** Through the holes of an open weave vapour goes straight. */
    private static final Span EDGE_OF_OPEN_WEAVE = new Span(0.8, 1.15, 1.8);
    /** Ways through felt wind more than those past threads. */
    private static final Span EDGE_OF_FELT = new Span(1.3, 1.75, 2.4);

    private static final Span CONTACT = new Span(0.2, 0.5, 1.0);
    private static final Span NO_FILM = Span.exactly(0);
    private static final Span FILM = new Span(3, 50, 350);
    private static final Span WAX = new Span(8, 50, 350);

    private VapourResistance() {}

    static Span m2PaW(Cloth cloth) {
        double density = cloth.blend().densityGCm3();
        Structure body = Structure.of(cloth);
        return Span.propagated(
                in -> {
                    double weight = body.weightGsm(in[0], in[1]);
                    double thickness = body.thicknessMm(in[0], in[1]);
                    double porosity = Structure.porosity(weight, thickness, density);
                    return in[3] * (in[4] + in[5] + in[2] * throughAir(thickness, porosity));
                },
                body.first(),
                body.second(),
                edge(cloth.weave()),
                Span.factor(1, MODEL_ERROR),
                film(cloth.finish()),
                CONTACT);
    }

    private static Span edge(Weave weave) {
        return switch (weave) {
            case FUR -> EDGE_OF_LONG_PILE;
            case FELT -> EDGE_OF_FELT;
            case OPEN_PLAIN -> EDGE_OF_OPEN_WEAVE;
            case PLAIN, TIGHT_PLAIN, TWILL, SATIN, PILE, JERSEY, FLEECE -> EDGE;
        };
    }

    /** Diffusion alone, m2 Pa/W. */
    static double throughAir(double thicknessMm, double porosity) {
        double e = Math.max(LEAST_POROSITY, porosity);
        return STILL_AIR_M2PA_W_PER_MM * thicknessMm / (e * Math.sqrt(e));
    }

    private static Span film(Finish finish) {
        return switch (finish) {
            case COATED -> FILM;
            case WAXED -> WAX;
            case NONE, WASHED, PRESHRUNK, MERCERISED, BRUSHED, FULLED, CALENDERED -> NO_FILM;
        };
    }
}
