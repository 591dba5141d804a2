package campcloth.rest;

import campcloth.garment.Sizes;
import campcloth.job.LayoutGate;
import campcloth.plan.ClothComparison;
import campcloth.plan.CuttingOrder;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Compares cloths by what the same garments cost from them. */
@RestController
@Tag(name = "Cutting plans")
class ClothComparisonController {

    private final ClothsToCut cloths;
    private final Sizes sizes;
    private final LayoutGate gate;

    ClothComparisonController(ClothsToCut cloths, Sizes sizes, LayoutGate gate) {
        this.cloths = cloths;
        this.sizes = sizes;
        this.gate = gate;
    }

    @PostMapping("/api/cutting-plans/comparison")
    @Operation(
            operationId = "compareCloths",
            summary = "Which of several cloths is the cheapest for the same garments",
            description = "At most 12 cloths, of different widths and prices. Nothing is kept.")
    ClothComparisonAnswer compare(@Valid @RequestBody ClothComparisonRequest request) {
        List<CuttingOrder> orders = request.orders(cloths, sizes);
        return ClothComparisonAnswer.of(gate.through(() -> ClothComparison.ranked(orders)), request);
    }
}
