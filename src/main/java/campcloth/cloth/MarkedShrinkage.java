package campcloth.cloth;

import java.util.List;

/**
 * What marks in one direction say, mean over the pairs. Percent of the first length, positive where the cloth became shorter;
 * the dimensional change of ISO 5077 has the other sign.
 *
 * @param pairs how many pairs of marks
 * @param afterEachWashPercent total shrinkage after each wash
 * @param standardErrorPercent standard error of the mean after the last wash; 0 for a single pair
 * @param readingErrorPercent what two readings can be off by
 * @param course whether it goes on
 */
public record MarkedShrinkage(
        int pairs,
        List<Double> afterEachWashPercent,
        double standardErrorPercent,
        double readingErrorPercent,
        Course course) {

    /** Whether the last wash still moved the marks. */
    public enum Course {
        /** One wash tells no course. */
        ONE_WASH_ONLY,
        /** The last wash moved them by more than its standard error and than can be misread. */
        STILL_MOVING,
        /** The last wash moved them by no more than that. */
        AT_REST
    }

    public MarkedShrinkage {
        afterEachWashPercent = List.copyOf(afterEachWashPercent);
    }

    public int washes() {
        return afterEachWashPercent.size();
    }

    public double firstPercent() {
        return afterEachWashPercent.get(0);
    }

    /** After the last wash that was measured: the figure, for so much cloth must be bought. */
    public double totalPercent() {
        return afterEachWashPercent.get(washes() - 1);
    }
}
