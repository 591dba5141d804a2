package campcloth.advice;

import campcloth.figure.Basis;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * What one criterion says of one cloth.
 *
 * @param criterion name of the criterion
 * @param score 0 worst to 100 best
 * @param scoreLow score at the unfavourable ends of the figures
 * @param scoreHigh score at the favourable ends of the figures
 * @param quantity what was computed; empty where no model holds
 * @param unit unit of the quantity
 * @param because the reason in plain words
 * @param basis weakest basis of the figures that went in
 */
public record Assessment(
        String criterion,
        double score,
        double scoreLow,
        double scoreHigh,
        Optional<Quantity> quantity,
        String unit,
        String because,
        Basis basis) {

    /** Scores a quantity and its interval. */
    static Assessment of(
            String criterion, DoubleUnaryOperator score, Quantity quantity, String unit, String because, Basis basis) {
        double atLow = score.applyAsDouble(quantity.low());
        double atHigh = score.applyAsDouble(quantity.high());
        double atValue = score.applyAsDouble(quantity.value());
        return new Assessment(
                criterion,
                atValue,
                Math.min(atValue, Math.min(atLow, atHigh)),
                Math.max(atValue, Math.max(atLow, atHigh)),
                Optional.of(quantity),
                unit,
                because,
                basis);
    }

    /** Where nothing could be computed: the middle of the scale, anything being possible. */
    static Assessment neutral(String criterion, String unit, String because, Basis basis) {
        return new Assessment(criterion, 50, 0, 100, Optional.empty(), unit, because, basis);
    }

    /** Where the criterion does not bite at all. */
    static Assessment best(String criterion, String unit, String because, Basis basis) {
        return new Assessment(criterion, 100, 100, 100, Optional.empty(), unit, because, basis);
    }
}
