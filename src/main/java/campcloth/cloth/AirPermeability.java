package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;

/**
 * Air permeability where nobody measured it, mm/s at 100 Pa (ISO 9237).
 *
 * <p>{@link KozenyCarman} between the fibres, times a factor for the holes between the threads by weave and by how their fibre
 * spins ({@link Threads}), times factors for finishes; then joined with the limit that inertia sets in the holes,
 * {@code 1/v = 1/v_laminar + 1/v_max}, {@code v_max = C beta sqrt(2 dP / rho)}, C = 0.65, beta the open area.
 *
 * <p>As much goes through holes that the threads make as between fibres, so the flow follows the fibre less than the square of
 * its diameter: {@code sqrt(}{@value #USUAL_FIBRE_UM}{@code um d)} stands for d, with which the flow rises as d. Lighter woven
 * cloth covers less: {@code (w0/w)^}{@value #COVER_EXPONENT} with w0 = {@value #USUAL_WEIGHT_GSM} g/m2, more for hair. All
 * factors are project choices, fitted to what is remembered of typical cloths: for every kind of cloth the median of estimate
 * over remembered figure lies between 0.7 and 1.4 (kinds of three rows or more), so that a cloth of unknown figures is neither better nor worse than its kin.
 *
 * <p>Valid for dry, unstretched cloth. Of a long pile only the ground resists. Film and wax leave 0 to 5 mm/s. The interval
 * carries the intervals of weight, thickness, fibre diameter and weave, and {@value #MODEL_ERROR} each way for the model; it is
 * never closer than {@value #LEAST_ERROR} each way. Neither weave nor weight tells how close the threads lie: so far off is one in ten
 * of the cloths measured in rogak-2021. Not a claim of windproofness.
 */
final class AirPermeability {

    static final String SOURCE = "estimate-kozeny-carman";

    private static final double MODEL_ERROR = 2.9;
    /** No closer than this each way: so far off were one in ten of the cloths measured in rogak-2021 (those used for fitting). */
    private static final double LEAST_ERROR = 4.4;

    private static final double RAISED_FACTOR = 0.8;
    private static final double USUAL_FIBRE_UM = 17;
    private static final double USUAL_WEIGHT_GSM = 200;
    private static final double COVER_EXPONENT = 0.4;
    /** Hair threads are bulkier: as much cover takes so much more weight. */
    private static final double HEAVIER_IN_HAIR = 1.5;

    private static final Span CLOSED = new Span(0, 1, 5);
    /** {@code sqrt(2 * 100 Pa / 1.2 kg/m3)} in mm/s. */
    private static final double FREE_JET_MM_S = 12_910;

    private static final double DISCHARGE = 0.65;
    /** Of a long pile the ground alone, a knit, carries this share of the weight. */
    private static final double GROUND_SHARE = 0.45;

    private static final Span GROUND_BULK_G_CM3 = new Span(0.20, 0.26, 0.36);
    private static final Span GROUND_FIBRE_UM = new Span(12, 16, 22);

    private AirPermeability() {}

    static Span mmS(Cloth cloth) {
        Span open = open(cloth);
        return cloth.finish().closesPores() ? CLOSED.atMost(open) : open.atLeastAsWideAs(LEAST_ERROR);
    }

    private static Span open(Cloth cloth) {
        double density = cloth.blend().densityGCm3();
        double holesLimit = DISCHARGE * openArea(cloth.weave()) * FREE_JET_MM_S;
        Span factor = holes(cloth).times(finishFactor(cloth));
        double coverGsm = coverGsm(cloth);
        double exponent = coverExponent(cloth);
        Span model = Span.factor(1, MODEL_ERROR);
        Structure body = cloth.weave() == Weave.FUR ? ground(cloth) : Structure.of(cloth);
        Span diameter = cloth.weave() == Weave.FUR ? GROUND_FIBRE_UM : hydraulicDiameterUm(cloth);
        return Span.propagated(
                in -> {
                    double weight = body.weightGsm(in[0], in[1]);
                    double thickness = body.thicknessMm(in[0], in[1]);
                    double porosity = Structure.porosity(weight, thickness, density);
                    double diameterUm = Math.sqrt(USUAL_FIBRE_UM * in[2]);
                    double bare = Math.pow(coverGsm / weight, exponent);
                    double laminar = KozenyCarman.velocityMmS(porosity, diameterUm, thickness) * bare * in[3];
                    return in[4] / (1 / laminar + 1 / holesLimit);
                },
                body.first(),
                body.second(),
                diameter,
                factor,
                model);
    }

    /** Weight at which the threads of woven cloth cover as usual, g/m2. */
    private static double coverGsm(Cloth cloth) {
        double hair = FibreKind.percentIn(cloth.blend(), FibreKind.HAIR) / 100;
        return USUAL_WEIGHT_GSM * (1 + (HEAVIER_IN_HAIR - 1) * hair);
    }

    /** 0 where fibres, not threads, close the cloth, and for silk. */
    private static double coverExponent(Cloth cloth) {
        double silk = FibreKind.percentIn(cloth.blend(), FibreKind.SILK) / 100;
        return Threads.lieOpen(cloth) ? COVER_EXPONENT * (1 - silk) : 0;
    }

    private static Structure ground(Cloth cloth) {
        return Structure.packed(Structure.of(cloth).weightGsm().times(GROUND_SHARE), GROUND_BULK_G_CM3);
    }

    /** Diameter of one fibre with the same surface per volume as the blend: volume shares over diameters. */
    private static Span hydraulicDiameterUm(Cloth cloth) {
        double volume = 0;
        double[] surface = new double[3];
        for (Blend.Share share : cloth.blend().shares()) {
            Fibre fibre = share.fibre();
            double part = share.percent() / fibre.densityGCm3().value();
            Span diameter = Span.of(Fineness.diameterUm(cloth, fibre)).times(Threads.hydraulicOverWidth(fibre));
            volume += part;
            surface[0] += part / diameter.low();
            surface[1] += part / diameter.mid();
            surface[2] += part / diameter.high();
        }
        return new Span(volume / surface[0], volume / surface[1], volume / surface[2]);
    }

    /** How much more passes than between the fibres alone. */
    private static Span holes(Cloth cloth) {
        if (BulkDensity.isFulled(cloth)) {
            return new Span(0.45, 0.7, 1.2);
        }
        return switch (cloth.weave()) {
            case OPEN_PLAIN -> new Span(1.9, 3.8, 6.6);
            case PLAIN -> new Span(0.8, 1.3, 2.2);
            case TIGHT_PLAIN -> new Span(0.25, 0.7, 1.1);
            case TWILL -> new Span(0.7, 1.15, 1.85);
            case SATIN -> new Span(0.35, 0.7, 1.1);
            case PILE -> new Span(0.3, 0.5, 0.9);
            case JERSEY -> new Span(0.9, 1.4, 2.4);
            case FLEECE -> new Span(0.65, 1.1, 1.8);
            case FUR -> new Span(0.65, 1.3, 2.0);
            case FELT -> new Span(0.85, 1.4, 2.2);
        };
    }

    private static Span finishFactor(Cloth cloth) {
        double factor = (BulkDensity.isLifted(cloth) ? RAISED_FACTOR : 1) * Threads.openness(cloth);
        return cloth.finish() == Finish.CALENDERED ? Span.factor(0.5 * factor, 1.3) : Span.exactly(factor);
    }

    /** Share of the face that is hole, where the limit of inertia applies. */
    private static double openArea(Weave weave) {
        return switch (weave) {
            case OPEN_PLAIN -> 0.45;
            case JERSEY, FLEECE, FUR, FELT, PILE -> 0.3;
            case PLAIN, TIGHT_PLAIN, TWILL, SATIN -> 0.2;
        };
    }
}
