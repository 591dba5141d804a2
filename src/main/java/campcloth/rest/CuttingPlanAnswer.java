package campcloth.rest;

import campcloth.plan.CuttingPlan;
import campcloth.plan.Fold;
import campcloth.plan.KeptPlan;
import campcloth.plan.Money;
import campcloth.plan.PlacedPiece;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** How much to buy and how to cut, hem and sew. */
record CuttingPlanAnswer(
        String id,
        @Schema(description = "what to ask for in the shop") double buyLengthCm,

        @Schema(description = "the same should the cloth shrink as much as its figures allow")
        double buyLengthHighCm,

        @Schema(description = "washed cloth that the layout takes")
        double netLengthCm,

        @Schema(description = "no layout of these pieces is shorter")
        double lowerBoundCm,

        double usableWidthCm,
        double usedPercent,
        double ruleOfThumbCm,
        String ruleOfThumb,

        @Schema(description = "how the cloth lies: NONE open, ONE folded once, TWO folded twice")
        Fold lay,

        double openLengthCm,
        @Nullable Double foldedLengthCm,

        @Schema(
                description =
                        "net length on cloth folded twice, both selvedges inwards; null where the pieces cannot be cut so")
        @Nullable
        Double twoFoldsLengthCm,

        @Nullable Boolean fitsRemnant,
        CuttingPlan.@Nullable Remnant remnant,
        List<PlacementBody> placements,
        List<SeamBody> seams,
        List<HemBody> hems,
        double seamAllowanceCm,
        int needleNm,
        double stitchLengthMm,
        double threadM,
        @Nullable Double cost,
        @Nullable String currency,

        @Schema(description = "how it is sewn and what the plan saves; null in plans kept before this was told")
        @Nullable
        MakingBody making,

        String layoutSvg,
        List<String> notes,
        List<String> cautions) {

    /** Where a piece lies: the lower-left corner of its bounding box as it lies. */
    @Schema(name = "Placement")
    record PlacementBody(
            String piece,
            int copy,
            double xCm,
            double yCm,
            boolean turned,
            boolean mirrored,

            @Schema(description = "which of lengthsAtHand it lies on, counted from 1; left out for the bolt")
            @JsonInclude(JsonInclude.Include.NON_NULL)
            @Nullable
            Integer lengthAtHand) {

        static PlacementBody of(PlacedPiece placed) {
            return new PlacementBody(
                    placed.piece(),
                    placed.copy(),
                    Rounded.to(placed.xCm(), 3),
                    Rounded.to(placed.yCm(), 3),
                    placed.turned(),
                    placed.mirrored(),
                    placed.atHand().orElse(null));
        }
    }

    /** A seam. */
    @Schema(name = "Seam")
    record SeamBody(String garment, String name, double lengthCm, String stitch) {

        static SeamBody of(CuttingPlan.GarmentSeam seam) {
            return new SeamBody(
                    seam.garment(),
                    seam.seam().name(),
                    Rounded.to(seam.seam().lengthCm(), 1),
                    seam.seam().stitch().name());
        }
    }

    /** A hem. */
    @Schema(name = "Hem")
    record HemBody(
            String garment,
            String edge,
            double edgeLengthCm,
            double allowanceCm,
            List<Double> foldsCm,
            double stitchFromFoldMm,
            @Nullable Double secondRowFromEdgeMm,
            double spareCm,
            String because) {

        static HemBody of(CuttingPlan.GarmentHem hem) {
            return new HemBody(
                    hem.garment(),
                    hem.hem().edge(),
                    Rounded.to(hem.hem().edgeLengthCm(), 1),
                    Rounded.to(hem.hem().allowanceCm(), 2),
                    hem.hem().foldsCm().stream()
                            .map(fold -> Rounded.to(fold, 2))
                            .toList(),
                    Rounded.to(hem.hem().stitchFromFoldMm(), 1),
                    hem.hem().secondRowFromEdgeMm().isPresent()
                            ? Rounded.to(hem.hem().secondRowFromEdgeMm().getAsDouble(), 1)
                            : null,
                    Rounded.to(hem.hem().spareCm(), 2),
                    hem.hem().because());
        }
    }

    static CuttingPlanAnswer of(KeptPlan kept) {
        CuttingPlan plan = kept.plan();
        return new CuttingPlanAnswer(
                kept.id(),
                Rounded.to(plan.buyLengthCm(), 1),
                Rounded.to(plan.buyLengthHighCm(), 1),
                Rounded.to(plan.netLengthCm(), 2),
                Rounded.to(plan.lowerBoundCm(), 2),
                Rounded.to(plan.usableWidthCm(), 2),
                Rounded.to(plan.usedPercent(), 1),
                Rounded.to(plan.ruleOfThumbCm(), 1),
                plan.ruleOfThumb(),
                plan.lay(),
                Rounded.to(plan.openLengthCm(), 2),
                plan.foldedLengthCm().map(cm -> Rounded.to(cm, 2)).orElse(null),
                plan.twoFoldsLengthCm().map(cm -> Rounded.to(cm, 2)).orElse(null),
                plan.fitsRemnant().orElse(null),
                plan.remnant().orElse(null),
                plan.placements().stream().map(PlacementBody::of).toList(),
                plan.seams().stream().map(SeamBody::of).toList(),
                plan.hems().stream().map(HemBody::of).toList(),
                plan.seamAllowanceCm(),
                plan.needleNm(),
                plan.stitchLengthMm(),
                Rounded.to(plan.threadM(), 1),
                plan.cost().map(Money::amount).orElse(null),
                plan.cost().map(Money::currency).orElse(null),
                plan.making().map(MakingBody::of).orElse(null),
                "/api/cutting-plans/" + kept.id() + "/layout.svg",
                plan.notes(),
                plan.cautions());
    }
}
