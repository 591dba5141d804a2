package campcloth.rest;

import campcloth.figure.Refused;
import campcloth.garment.Sizes;
import campcloth.plan.ClothComparison;
import campcloth.plan.CuttingOrder;
import campcloth.plan.Fold;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which of these cloths is the cheapest for these garments? */
record ClothComparisonRequest(
        @NotEmpty @Size(max = ClothComparison.MOST) List<@NotNull @Valid CutClothChoice> cloths,

        @NotEmpty @Size(max = 50) List<CuttingPlanRequest.@NotNull @Valid Line> garments,

        @Schema(description = "how the cloth may lie; ANY where it is left out") @Nullable
        Fold fold,

        @Schema(description = "what the shop rounds up to; 10 where it is left out") @Nullable
        Double shopStepCm) {

    /** The same garments, from each of the cloths. */
    List<CuttingOrder> orders(ClothsToCut known, Sizes sizes) {
        List<CuttingOrder.Line> lines = CuttingPlanRequest.lines(garments, sizes);
        List<CuttingOrder> orders = new ArrayList<>();
        for (int i = 0; i < cloths.size(); i++) {
            CutClothChoice choice = cloths.get(i);
            orders.add(new CuttingOrder(
                    Refused.within("cloths[" + i + "]", () -> known.amongOthers(choice)),
                    lines,
                    Optional.empty(),
                    fold == null ? Fold.ANY : fold,
                    shopStepCm == null ? CuttingOrder.USUAL_STEP_CM : shopStepCm));
        }
        return orders;
    }
}
