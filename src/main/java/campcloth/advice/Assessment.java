package campcloth.advice;

import campcloth.figure.Basis;
import java.util.Optional;

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

    /** Scores a quantity and its interval by a curve. */
    static Assessment of(String criterion, Curve curve, Quantity quantity, String unit, String because, Basis basis) {
        double atLow = curve.score(quantity.low());
        double atHigh = curve.score(quantity.high());
        double score = curve.score(quantity.value());
        return new Assessment(
                criterion,
                score,
                Math.min(score, Math.min(atLow, atHigh)),
                Math.max(score, Math.max(atLow, atHigh)),
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
