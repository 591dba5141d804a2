package campcloth.fire;

import campcloth.event.RuleConditions;
import campcloth.figure.Words;
import java.util.List;

/** The least mass per area, held against the mass as given and against as little as a piece may weigh. */
final class LeastWeightCheck implements ClothCheck {

    @Override
    public List<Finding> findings(RuleConditions asked, WornCloth cloth) {
        return asked.minWeightGsm().map(least -> finding(least, cloth.weight())).stream()
                .toList();
    }

    private static Finding finding(double leastGsm, ClothWeight weight) {
        double given = weight.givenGsm();
        double low = weight.lowGsm();
        String asked = " At least " + Words.number(leastGsm) + " g/m2 is asked for.";
        if (given < leastGsm) {
            return Finding.forbidden("It is given as " + Words.number(given) + " g/m2." + asked);
        }
        if (weight.gradedGsm() < leastGsm) {
            return Finding.forbidden("Its weight is not well known, so it counts as " + Words.number(weight.gradedGsm())
                    + " g/m2: weigh it." + asked);
        }
        if (low < leastGsm) {
            return Finding.ask("It is given as " + Words.number(given) + " g/m2; a piece may weigh " + Words.number(low)
                    + ": weigh it." + asked);
        }
        return Finding.passed("It weighs " + Words.number(low) + " g/m2 or more." + asked);
    }
}
