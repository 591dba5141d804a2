package campcloth.rest;

import campcloth.plan.Making;
import campcloth.plan.Money;
import campcloth.plan.RuleSaving;
import campcloth.plan.SmallPieces;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How the garments of a plan are sewn, and what the plan tells beyond the cloth. */
@Schema(name = "Making")
record MakingBody(
        List<GarmentWorkBody> garments,

        @Schema(description = "facings, bindings, pockets; null where the designs have none") @Nullable
        SmallPiecesBody smallPieces,

        @Schema(
                description =
                        "the rule of thumb's length less the length to buy; negative where the rule falls short of what is needed")
        double savedCm,

        @Schema(description = "the same in money; null without a price or where nothing is saved") @Nullable
        Double savedCost,

        @Schema(description = "what to buy for the rows that the rule has in mind, with seams, hems and shrinkage")
        double rowsBuyLengthCm,

        @Schema(description = "whether the rule's length holds those rows")
        boolean ruleOfThumbHolds) {

    /** Small pieces, should they be cut from the same cloth. */
    @Schema(name = "SmallPieces")
    record SmallPiecesBody(
            List<String> pieces,

            @Schema(description = "net length without them") double lengthWithoutCm,

            @Schema(description = "net length with them from the same cloth; null where it was not tried") @Nullable
            Double lengthWithCm,

            @Nullable Double buyLengthWithCm,

            @Schema(description = "whether they lie in what the layout given leaves over")
            boolean inOffcuts,

            @Schema(description = "where they lie there; empty where they do not")
            List<CuttingPlanAnswer.PlacementBody> placements) {

        static SmallPiecesBody of(SmallPieces small) {
            return new SmallPiecesBody(
                    small.pieces(),
                    Rounded.to(small.lengthWithoutCm(), 2),
                    small.lengthWithCm().map(cm -> Rounded.to(cm, 2)).orElse(null),
                    small.buyLengthWithCm().map(cm -> Rounded.to(cm, 1)).orElse(null),
                    small.inOffcuts(),
                    small.placements().stream()
                            .map(CuttingPlanAnswer.PlacementBody::of)
                            .toList());
        }
    }

    static MakingBody of(Making making) {
        RuleSaving rule = making.rule();
        return new MakingBody(
                making.garments().stream().map(GarmentWorkBody::of).toList(),
                making.smallPieces().map(SmallPiecesBody::of).orElse(null),
                Rounded.to(rule.savedCm(), 1),
                rule.saved().map(Money::amount).orElse(null),
                Rounded.to(rule.rowsBuyCm(), 1),
                rule.ruleHolds());
    }
}
