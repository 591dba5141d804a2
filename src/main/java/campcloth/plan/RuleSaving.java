package campcloth.plan;

import java.util.Optional;

/**
 * A plan beside the rule of thumb.
 *
 * @param savedCm length by the rule, rounded as the shop does, less the length to buy; negative where the rule falls short
 * @param saved what that is in money; empty without a price or where nothing is saved
 * @param rowsBuyCm what to buy for the rows that the rule has in mind, once they have seams, hems and shrinkage
 * @param ruleHolds whether the length by the rule holds those rows
 */
public record RuleSaving(double savedCm, Optional<Money> saved, double rowsBuyCm, boolean ruleHolds) {

    static RuleSaving of(CuttingOrder order, RuleOfThumb rule, double buyLengthCm) {
        double savedCm = rule.roundedCm() - buyLengthCm;
        return new RuleSaving(
                savedCm,
                order.cloth().price().filter(price -> savedCm > 0).map(price -> price.times(savedCm / 100)),
                rule.rowsBuyCm(),
                rule.rowsBuyCm() <= rule.roundedCm());
    }
}
