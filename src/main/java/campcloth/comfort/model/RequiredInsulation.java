package campcloth.comfort.model;

import campcloth.comfort.Reading;
import campcloth.comfort.Reading.OutOfRange;
import java.util.Optional;

/**
 * Required clothing insulation IREQ of ISO 11079:2007, clo: the resultant insulation that keeps the body in the state of the
 * criterion for as long as the cold lasts. Found by bisection to 1e-9 m2 K/W between 0 and 3 m2 K/W; 0 where the naked body
 * would already be too warm. Range: see {@link ColdBalance}.
 */
public final class RequiredInsulation {

    private static final double MOST_M2KW = 3;

    private RequiredInsulation() {}

    public static Reading clo(Air air, double metabolicWm2, Motion motion, ColdCriterion criterion) {
        Optional<OutOfRange> outside = ColdBalance.outside(air, metabolicWm2);
        if (outside.isPresent()) {
            return outside.get();
        }
        ColdBalance balance = new ColdBalance(air, metabolicWm2, motion, criterion);
        if (balance.missingWm2(0, 0) >= 0) {
            return Reading.exact(0);
        }
        if (balance.missingWm2(MOST_M2KW, 0) < 0) {
            return new OutOfRange(ColdBalance.MODEL, "no clothing balances that cold");
        }
        double insulation = Root.ofRising(i -> balance.missingWm2(i, 0), 0, MOST_M2KW, 1e-9);
        return Reading.exact(insulation / Worn.M2KW_PER_CLO);
    }
}
