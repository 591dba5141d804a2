package campcloth.cloth;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import java.util.List;

/**
 * Two marks on a cloth and how far apart they lay.
 *
 * @param beforeCm before any wash, 5 to 300 cm
 * @param afterCm after each wash in turn, 1 to 10 of them
 */
public record MarkPair(double beforeCm, List<Double> afterCm) {

    public static final int MOST_WASHES = 10;

    private static final Range BEFORE = new Range("beforeCm", 5, 300, "cm");

    public MarkPair {
        afterCm = List.copyOf(afterCm);
        BEFORE.check(beforeCm);
        if (afterCm.isEmpty() || afterCm.size() > MOST_WASHES) {
            throw Refused.of("afterCm", "has " + afterCm.size() + " washes", "give 1 to " + MOST_WASHES + " washes");
        }
        for (int wash = 0; wash < afterCm.size(); wash++) {
            double after = afterCm.get(wash);
            double shorter = (beforeCm - after) / beforeCm * 100;
            if (!Property.SHRINK_WARP_PERCENT.range().contains(shorter)) {
                throw Refused.of("afterCm[" + wash + "]", told(after, shorter), remedy(shorter));
            }
        }
    }

    private static String told(double after, double shorter) {
        return !Double.isFinite(after)
                ? "is not a finite number"
                : "is " + Words.exact(after) + " cm, " + Words.number(Math.abs(shorter)) + " % "
                        + (shorter < 0 ? "longer" : "shorter") + " than before";
    }

    private static String remedy(double shorter) {
        Range range = Property.SHRINK_WARP_PERCENT.range();
        return "measure again in cm, and see that before and after are not exchanged; up to "
                + Words.number(range.most()) + " % shorter and " + Words.number(-range.least())
                + " % longer can be reckoned with";
    }

    /** Percent of the first length by which it is shorter after that wash, counted from 1; negative where it grew. */
    public double shorterPercent(int wash) {
        return (beforeCm - afterCm.get(wash - 1)) / beforeCm * 100;
    }

    int washes() {
        return afterCm.size();
    }
}
