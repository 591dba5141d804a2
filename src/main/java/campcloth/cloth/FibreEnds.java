package campcloth.cloth;

import campcloth.fibre.Blend;
import campcloth.fibre.Fibre;
import campcloth.figure.Figure;

/**
 * The ends of one fibre of a blend: how many there are and how many of them are too stiff to bend before they prick.
 *
 * <p>The number of ends goes with mass over cross-section: {@code share / (density d^2)}, at equal length of fibre. An end
 * pricks when it is coarser than a critical diameter, 30 um for hair. For other fibres the same buckling load is reached at
 * {@code 30 (3.5 GPa / E)^(1/4)}, since an Euler strut carries in proportion to {@code E d^4}, with 3.5 GPa the modulus of wool
 * (from memory). Cotton is a collapsed ribbon, some three times as wide as thick (from memory): it bends like a round fibre of
 * half its width, so its limit is twice as far off. The share coarser than that follows from a normal law with the mean and the coefficient of variation.
 *
 * <p>Bast fibres scratch rather than prick and are told apart by {@link BastRoughness}: none of their ends is counted as coarse.
 *
 * @param number ends, in units that only compare within one blend
 * @param coarseShare how many of them are coarser than the critical diameter, 0 to 1
 */
record FibreEnds(Span number, Span coarseShare) {

    static final double COARSE_HAIR_UM = 30;

    private static final double WOOL_MODULUS_GPA = 3.5;
    private static final double SPUN_FIBRE_MODULUS_GPA = 8;
    /** Fourth root of pi/64 over 1/(12 * 27), the second moments of area of circle and ribbon. */
    private static final double RIBBON = 2.0;

    static FibreEnds of(Cloth cloth, Blend.Share share) {
        Fibre fibre = share.fibre();
        Span diameter = Span.of(Fineness.diameterUm(cloth, fibre));
        Span variation = Span.of(Fineness.variationPercent(cloth, fibre));
        double mass = share.percent() / fibre.densityGCm3().value();
        Span number =
                new Span(mass / square(diameter.high()), mass / square(diameter.mid()), mass / square(diameter.low()));
        return new FibreEnds(number, coarseShare(diameter, variation, fibre));
    }

    /** Share of a normal distribution of diameters that lies above the limit, 0 to 1. */
    static double coarserThan(double limitUm, double meanUm, double variationPercent) {
        double deviationUm = meanUm * variationPercent / 100;
        if (deviationUm == 0) {
            return meanUm > limitUm ? 1 : 0;
        }
        return NormalLaw.upperTail((limitUm - meanUm) / deviationUm);
    }

    /** Diameter from which an end of this fibre pricks, um. */
    static double criticalUm(Fibre fibre) {
        FibreKind kind = FibreKind.of(fibre);
        if (kind == FibreKind.HAIR || kind == FibreKind.UNNAMED) {
            return COARSE_HAIR_UM;
        }
        double modulusGPa = fibre.modulusGPa().map(Figure::value).orElse(SPUN_FIBRE_MODULUS_GPA);
        double round = COARSE_HAIR_UM * Math.pow(WOOL_MODULUS_GPA / modulusGPa, 0.25);
        return kind == FibreKind.COTTON ? RIBBON * round : round;
    }

    /** The share falls or rises steadily with each of mean and variation, so its extremes lie at the corners. */
    private static Span coarseShare(Span diameter, Span variation, Fibre fibre) {
        if (FibreKind.of(fibre) == FibreKind.BAST) {
            return Span.exactly(0);
        }
        double limit = criticalUm(fibre);
        double low = Math.min(
                coarserThan(limit, diameter.low(), variation.low()),
                coarserThan(limit, diameter.low(), variation.high()));
        double high = Math.max(
                coarserThan(limit, diameter.high(), variation.low()),
                coarserThan(limit, diameter.high(), variation.high()));
        return new Span(low, coarserThan(limit, diameter.mid(), variation.mid()), high);
    }

    private static double square(double x) {
        return x * x;
    }
}
