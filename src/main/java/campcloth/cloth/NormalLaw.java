package campcloth.cloth;

/**
 * The normal law's upper tail {@code Q(z) = 1 - Phi(z)}: rational approximation of Hart et al., "Computer Approximations"
 * (1968), No 5666, with the continued fraction of the tail beyond 7.07 (Abramowitz and Stegun 26.2.14, cut after four terms).
 * Its relative error is below 1e-8 throughout (found by comparison with the complementary error function, z from 0 to 37);
 * beyond z = 37 it is 0.
 */
final class NormalLaw {

    private static final double[] NUMERATOR = {
        3.52624965998911e-2,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };
    private static final double[] DENOMINATOR = {
        8.83883476483184e-2,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };
    private static final double FAR = 7.07106781186547;
    private static final double BEYOND = 37;
    private static final double ROOT_OF_TWO_PI = 2.506628274631;

    private NormalLaw() {}

    /** Share of a normal distribution that lies more than z standard deviations above the mean, 0 to 1. */
    static double upperTail(double z) {
        return z < 0 ? 1 - tail(-z) : tail(z);
    }

    private static double tail(double z) {
        if (z > BEYOND) {
            return 0;
        }
        double bell = Math.exp(-z * z / 2);
        return z < FAR ? bell * polynomial(NUMERATOR, z) / polynomial(DENOMINATOR, z) : bell / farFraction(z);
    }

    private static double farFraction(double z) {
        return ROOT_OF_TWO_PI * (z + 1 / (z + 2 / (z + 3 / (z + 4 / (z + 0.65)))));
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (double coefficient : coefficients) {
            sum = sum * x + coefficient;
        }
        return sum;
    }
}
