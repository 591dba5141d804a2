package campcloth.rest;

import campcloth.garment.Sizes;
import campcloth.job.LayoutGate;
import campcloth.plan.ClothToCut;
import campcloth.plan.CuttingOrder;
import campcloth.plan.CuttingPlanner;
import campcloth.plan.KeptPlan;
import campcloth.plan.Plans;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.net.URI;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Plans what to buy and how to cut it. */
@RestController
@RequestMapping("/api/cutting-plans")
@Tag(name = "Cutting plans", description = "How much? Length to buy, layout, hems, thread, cost")
class CuttingPlanController {

    private final CuttingPlanner planner;
    private final Plans plans;
    private final ClothsToCut cloths;
    private final LayoutGate gate;
    private final Sizes sizes;

    CuttingPlanController(CuttingPlanner planner, Plans plans, ClothsToCut cloths, LayoutGate gate, Sizes sizes) {
        this.planner = planner;
        this.plans = plans;
        this.cloths = cloths;
        this.gate = gate;
        this.sizes = sizes;
    }

    @PostMapping
    @Operation(
            operationId = "planCutting",
            summary = "Plans and keeps: length to buy, cutting layout, hems, seams, thread, needle, pre-wash, cost",
            description = "A piece that is wider than the cloth is refused with what would help.")
    @ApiResponse(responseCode = "201", description = "The plan as it is kept", useReturnTypeSchema = true)
    ResponseEntity<CuttingPlanAnswer> plan(@Valid @RequestBody CuttingPlanRequest request) {
        ClothToCut cloth = cloths.of(request.choice());
        CuttingOrder order = request.order(cloth, sizes);
        KeptPlan kept = plans.add(gate.through(() -> planner.plan(order)));
        return ResponseEntity.created(URI.create("/api/cutting-plans/" + kept.id()))
                .body(CuttingPlanAnswer.of(kept));
    }

    @GetMapping("/{id}")
    @Operation(operationId = "getCuttingPlan", summary = "A plan that was kept")
    CuttingPlanAnswer one(@PathVariable String id) {
        return CuttingPlanAnswer.of(kept(id));
    }

    private KeptPlan kept(String id) {
        return plans.byId(id).orElseThrow(() -> new Missing("cutting plan", id));
    }
}
