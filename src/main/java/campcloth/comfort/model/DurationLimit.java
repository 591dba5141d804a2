package campcloth.comfort.model;

import campcloth.comfort.Reading;
import campcloth.comfort.Reading.OutOfRange;
import java.util.Optional;

/**
 * Duration limited exposure D_lim of ISO 11079:2007: hours until the body has lost 40 Wh/m2 in clothing that does not suffice.
 * From the rate of cooling S: 40 / -S. A time of 8 hours or more, or no cooling at all, is told as 8: the standard is made for
 * a working day. Rest and warming up again are not credited. Range: see {@link ColdBalance}.
 */
public final class DurationLimit {

    public static final double LONGEST_HOURS = 8;

    private static final double LOSS_WHM2 = 40;
    private static final double FASTEST_COOLING_WM2 = -2000;

    private DurationLimit() {}

    public static Reading hours(
            Air air, double metabolicWm2, Motion motion, ColdCriterion criterion, double resultantM2KW) {
        Optional<OutOfRange> outside = ColdBalance.outside(air, metabolicWm2);
        if (outside.isPresent()) {
            return outside.get();
        }
        ColdBalance balance = new ColdBalance(air, metabolicWm2, motion, criterion);
        double slowest = -LOSS_WHM2 / LONGEST_HOURS;
        if (balance.missingWm2(resultantM2KW, slowest) >= 0) {
            return Reading.exact(LONGEST_HOURS);
        }
        double storage =
                -Root.ofRising(s -> balance.missingWm2(resultantM2KW, -s), -slowest, -FASTEST_COOLING_WM2, 1e-6);
        return Reading.exact(LOSS_WHM2 / -storage);
    }
}
