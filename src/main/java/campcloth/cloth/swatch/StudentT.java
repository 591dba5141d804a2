package campcloth.cloth.swatch;

/**
 * Quantiles of Student's t: how many standard errors either way hold the mean in 95 of 100 cases. NIST/SEMATECH e-Handbook of
 * Statistical Methods, table of upper critical values, column 0.025, 1 to 30 degrees of freedom.
 */
final class StudentT {

    private static final double[] UPPER_0_025 = {
        12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160, 2.145, 2.131, 2.120,
        2.110, 2.101, 2.093, 2.086, 2.080, 2.074, 2.069, 2.064, 2.060, 2.056, 2.052, 2.048, 2.045, 2.042
    };

    private StudentT() {}

    /**
     * The quantile for an interval of 95 %.
     *
     * @param degreesOfFreedom from 1 on; beyond 30 that of 30, which is a little wider
     */
    static double of95Percent(int degreesOfFreedom) {
        return UPPER_0_025[Math.min(degreesOfFreedom, UPPER_0_025.length) - 1];
    }
}
