package campcloth.layout.drawing;

import campcloth.figure.Words;

/**
 * How large the cloth is drawn.
 *
 * @param ratioValue cm of cloth for a cm of paper
 */
record Scale(double ratioValue) {

    private static final double MM_PER_CM = 10;
    /** No larger than this: a narrow cloth would run over many pages. */
    private static final double LARGEST = 5;

    private static final double[] STEPS = {1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9};

    /** The largest plain scale at which a width of cloth fits a width of paper. */
    static Scale fitting(double widthCm, double widthMm) {
        return plain(Math.max(LARGEST, widthCm * MM_PER_CM / widthMm));
    }

    /** The next plain ratio that is not less. */
    static Scale plain(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double step : STEPS) {
            if (step * power >= least * (1 - 1e-9)) {
                return new Scale(step * power);
            }
        }
        return new Scale(10 * power);
    }

    double mmPerCm() {
        return MM_PER_CM / ratioValue;
    }

    String ratio() {
        return Words.number(ratioValue);
    }
}
