package campcloth.advice;

/**
 * Nodes at even steps of the logarithm of a positive figure; beyond the first and the last a figure counts as they do.
 *
 * @param least figure of the first node
 * @param most figure of the last node
 * @param nodes how many, an odd number
 * @param stepsPerLog how many steps a unit of the logarithm is
 */
record LogAxis(double least, double most, int nodes, double stepsPerLog) {

    private static final double NARROWEST = 1.001;

    /** Over the figures from one to the other, so far as they lie between the limits outside of which nothing changes. */
    static LogAxis over(double from, double to, double leastThatCounts, double mostThatCounts, int nodes) {
        double least = Math.max(leastThatCounts, Math.min(from, mostThatCounts / NARROWEST));
        double most = Math.max(least * NARROWEST, Math.min(to, mostThatCounts));
        return new LogAxis(least, most, nodes, (nodes - 1) / Math.log(most / least));
    }

    double at(int node) {
        return least * Math.pow(most / least, (double) node / (nodes - 1));
    }

    /** Where a figure lies between the nodes, from 0 to the number of the last. */
    double place(double figure) {
        double place = Math.log(figure / least) * stepsPerLog;
        return Math.max(0, Math.min(nodes - 1, place));
    }
}
