package campcloth.rest;

import campcloth.advice.Assessment;
import campcloth.advice.Quantity;
import campcloth.figure.Basis;
import io.swagger.v3.oas.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** What one criterion says. */
@Schema(name = "CriterionScore")
record CriterionBody(
        @Schema(description = "warmth, heat, breathability, itch, fire or weight")
        String criterion,

        @Schema(description = "0 worst to 100 best") double score,
        double scoreLow,
        double scoreHigh,

        @Schema(description = "how much it counts at this event, of 1")
        double weight,

        @Schema(description = "the computed quantity; null where no model holds") @Nullable
        Double value,

        @Nullable Double low,
        @Nullable Double high,
        String unit,
        String because,

        @Schema(description = "weakest basis of the figures that went in")
        Basis basis) {

    static CriterionBody of(Assessment assessment, double weight) {
        Quantity quantity = assessment.quantity().orElse(null);
        return new CriterionBody(
                assessment.criterion(),
                Rounded.to(assessment.score(), 1),
                Rounded.to(assessment.scoreLow(), 1),
                Rounded.to(assessment.scoreHigh(), 1),
                Rounded.to(weight, 3),
                quantity == null ? null : Rounded.to(quantity.value(), 3),
                quantity == null ? null : Rounded.to(quantity.low(), 3),
                quantity == null ? null : Rounded.to(quantity.high(), 3),
                assessment.unit(),
                assessment.because(),
                assessment.basis());
    }
}
