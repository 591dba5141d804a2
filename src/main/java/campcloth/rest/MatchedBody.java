package campcloth.rest;

import campcloth.plan.Matched;
import campcloth.plan.Money;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A layout in which stripes or checks match at the hem and in the middle of each piece. */
@Schema(name = "Matched")
record MatchedBody(
        @Schema(description = "the repeat along the cloth, as it is cut") @Nullable
        Double repeatLengthCm,

        @Nullable Double repeatWidthCm,
        double netLengthCm,
        double buyLengthCm,

        @Schema(description = "more to buy than without matching")
        double extraCm,

        @Nullable Double extraCost,
        List<CuttingPlanAnswer.PlacementBody> placements,

        @Schema(
                description = "where the first line along that the hems meet lies, from the cut edge; left out where"
                        + " nothing repeats along")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Double lineFromCutCm,

        @Schema(
                description = "where the first stripe on which the middles lie is, from the left edge; left out where"
                        + " nothing repeats across")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Double lineFromSelvedgeCm) {

    static MatchedBody of(Matched matched) {
        return new MatchedBody(
                matched.repeatLengthCm().map(cm -> Rounded.to(cm, 2)).orElse(null),
                matched.repeatWidthCm().map(cm -> Rounded.to(cm, 2)).orElse(null),
                Rounded.to(matched.lengthCm(), 2),
                Rounded.to(matched.buyLengthCm(), 1),
                Rounded.to(matched.extraCm(), 1),
                matched.extraCost().map(Money::amount).orElse(null),
                LengthsAtHandBody.placements(matched.placements()),
                matched.lineFromCutCm().map(cm -> Rounded.to(cm, 3)).orElse(null),
                matched.lineFromSelvedgeCm().map(cm -> Rounded.to(cm, 3)).orElse(null));
    }
}
