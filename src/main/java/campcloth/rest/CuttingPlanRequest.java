package campcloth.rest;

import campcloth.cloth.Finish;
import campcloth.cloth.Surface;
import campcloth.cloth.Weave;
import campcloth.figure.Refused;
import campcloth.garment.Options;
import campcloth.garment.SewnBy;
import campcloth.garment.Sizes;
import campcloth.layout.AtHand;
import campcloth.layout.Repeat;
import campcloth.plan.ClothToCut;
import campcloth.plan.CuttingOrder;
import campcloth.plan.Fold;
import campcloth.plan.Particulars;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How much of this cloth for these garments? */
record CuttingPlanRequest(
        @Schema(description = "the cloth, or clothId in its place") @Nullable @Valid
        CutCloth cloth,

        @Schema(description = "id of a cloth in the catalogue") @Nullable
        String clothId,

        @Schema(description = "with clothId: whether it is washed before cutting; true where it is left out") @Nullable
        Boolean prewash,

        @Schema(description = "with clothId: width of each selvedge; 1 where it is left out") @Nullable
        Double selvedgeCm,

        @NotEmpty @Size(max = 50) List<@NotNull @Valid Line> garments,

        @Schema(description = "length of a piece at hand, as it lies there") @Nullable
        Double remnantLengthCm,

        @Schema(description = "pieces of the same cloth that are to be used up before any is bought")
        @Nullable
        @Size(max = 8)
        List<@NotNull @Valid Length> lengthsAtHand,

        @Schema(description = "repeat of stripes or checks along the cloth, as it is sold") @Nullable
        Double repeatLengthCm,

        @Schema(description = "the same across the cloth") @Nullable
        Double repeatWidthCm,

        @Schema(description = "how the cloth may lie; ANY where it is left out") @Nullable
        Fold fold,

        @Schema(description = "what the shop rounds up to; 10 where it is left out") @Nullable
        Double shopStepCm,

        @Schema(description = "MACHINE where it is left out") @Nullable
        SewnBy sewnBy) {

    /** A cloth as the shop sells it. */
    @Schema(name = "ClothToCut")
    record CutCloth(
            @Nullable @Size(max = 200) String name,
            @Nullable @Size(max = 20) List<@NotNull @Valid ShareBody> blend,
            @Nullable Weave weave,
            @Nullable Surface surface,
            @Nullable Finish finish,
            @Schema(example = "140") @NotNull Double widthCm,
            @Schema(example = "200") @Nullable Double weightGsm,
            @Nullable Double thicknessMm,
            @Schema(example = "6") @Nullable Double shrinkWarpPercent,
            @Schema(example = "4") @Nullable Double shrinkWeftPercent,
            @Nullable Boolean nap,
            @Nullable Boolean stretch,

            @Schema(description = "whether it is washed before cutting; true where it is left out") @Nullable
            Boolean prewash,

            @Schema(example = "14.5") @Nullable Double pricePerMetre,

            @Schema(example = "EUR", description = "EUR where it is left out") @Nullable
            String currency,

            @Schema(description = "width of each selvedge; 1 where it is left out") @Nullable
            Double selvedgeCm) {}

    /** A piece of cloth at hand. */
    @Schema(name = "LengthAtHand")
    record Length(
            @Schema(description = "as it lies there", example = "80") @NotNull
            Double lengthCm,

            @Schema(description = "as wide as the cloth where it is left out") @Nullable
            Double widthCm) {}

    /** Some garments alike. */
    @Schema(name = "GarmentLine")
    record Line(
            @Schema(example = "tunic") @NotNull String design,

            @Schema(description = "1 where it is left out") @Nullable
            Integer count,

            @Schema(description = "measurements in cm by key", example = "{\"finishedChestCm\": 126}")
            @Nullable
            @Size(max = 40)
            Map<String, @NotNull Double> wearer,

            @Schema(description = "key of a size, for what was not measured; measurements given win", example = "W-M")
            @Nullable
            @Size(max = 40)
            String size,

            @Schema(example = "{\"sideSplits\": false}") @Nullable @Size(max = 40)
            Map<String, @NotNull Object> options) {

        CuttingOrder.Line line(Sizes sizes) {
            return new CuttingOrder.Line(
                    design,
                    count == null ? 1 : count,
                    ToldWearer.of(wearer, size, sizes),
                    Refused.within("options", () -> Options.of(options == null ? Map.of() : options)));
        }
    }

    CutClothChoice choice() {
        return new CutClothChoice(cloth, clothId, prewash, selvedgeCm);
    }

    CuttingOrder order(ClothToCut toCut, Sizes sizes) {
        return new CuttingOrder(
                toCut,
                lines(garments, sizes),
                Optional.ofNullable(remnantLengthCm),
                fold == null ? Fold.ANY : fold,
                shopStepCm == null ? CuttingOrder.USUAL_STEP_CM : shopStepCm,
                particulars());
    }

    private Particulars particulars() {
        List<AtHand> atHand = new ArrayList<>();
        List<Length> given = lengthsAtHand == null ? List.of() : lengthsAtHand;
        for (int i = 0; i < given.size(); i++) {
            Length length = given.get(i);
            atHand.add(Refused.within(
                    "lengthsAtHand[" + i + "]",
                    () -> new AtHand(length.lengthCm(), Optional.ofNullable(length.widthCm()), Optional.empty())));
        }
        return new Particulars(
                sewnBy == null ? SewnBy.MACHINE : sewnBy,
                atHand,
                repeatLengthCm == null && repeatWidthCm == null
                        ? Optional.empty()
                        : Optional.of(
                                Repeat.every(Optional.ofNullable(repeatLengthCm), Optional.ofNullable(repeatWidthCm))));
    }

    static List<CuttingOrder.Line> lines(List<Line> garments, Sizes sizes) {
        List<CuttingOrder.Line> lines = new ArrayList<>();
        for (int i = 0; i < garments.size(); i++) {
            Line line = garments.get(i);
            lines.add(Refused.within("garments[" + i + "]", () -> line.line(sizes)));
        }
        return lines;
    }
}
