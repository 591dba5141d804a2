package campcloth.comfort.model;

import campcloth.comfort.Reading;
import campcloth.comfort.Reading.OutOfRange;
import java.util.Optional;

/**
 * Insulation needed above 10 degrees Celsius, where ISO 11079 does not hold: the least clothing as worn, ordinary permeable,
 * with which the skin of the {@link TwoNode} after one hour is as warm as it is in comfort, 35.7 - 0.0285 M degrees Celsius
 * (the neutral criterion of ISO 11079, after Fanger). Combining the two is a choice of the project. Between 0 and 4 clo, to
 * 1e-4 clo; no value where 4 clo are too little.
 */
public final class SkinNeed {

    private static final int MINUTES = 60;
    private static final double MOST_CLO = 4;

    private SkinNeed() {}

    public static Reading clo(Air air, double met, boolean seated) {
        Optional<OutOfRange> outside = TwoNode.outside(air, met, Worn.ordinary(0));
        if (outside.isPresent()) {
            return outside.get();
        }
        double comfortC = ColdCriterion.NEUTRAL.skinC(met * TwoNode.WM2_PER_MET);
        if (skinC(air, met, 0, seated) >= comfortC) {
            return Reading.exact(0);
        }
        if (skinC(air, met, MOST_CLO, seated) < comfortC) {
            return new OutOfRange(TwoNode.MODEL, "even 4 clo do not keep the skin warm for an hour");
        }
        return Reading.exact(Root.ofRising(clo -> skinC(air, met, clo, seated) - comfortC, 0, MOST_CLO, 1e-4));
    }

    /** Whether the model does not hold there, whatever is worn. */
    public static boolean outside(Air air, double met) {
        return TwoNode.outside(air, met, Worn.ordinary(0)).isPresent();
    }

    private static double skinC(Air air, double met, double clo, boolean seated) {
        return new TwoNode(air, met, Worn.ordinary(clo), seated).after(MINUTES).skinC();
    }
}
