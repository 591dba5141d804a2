package campcloth.rest;

import campcloth.garment.Sizes;
import campcloth.layout.LayoutDrawing;
import campcloth.plan.ClothToCut;
import campcloth.plan.CuttingOrder;
import campcloth.plan.CuttingPlanner;
import campcloth.plan.KeptPlan;
import campcloth.plan.Plans;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.net.URI;
import org.springframework.http.MediaType;
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

    private static final MediaType SVG = MediaType.valueOf("image/svg+xml;charset=UTF-8");

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

    @GetMapping("/{id}/layout.svg")
    @Operation(operationId = "drawCuttingPlan", summary = "The cutting layout as a drawing")
    @ApiResponse(
            responseCode = "200",
            description = "A drawing to scale",
            content = @Content(mediaType = "image/svg+xml", schema = @Schema(ref = "Drawing")))
    ResponseEntity<String> drawing(@PathVariable String id) {
        return ResponseEntity.ok()
                .contentType(SVG)
                .body(LayoutDrawing.svg(kept(id).plan().layout(), "Cutting layout"));
    }

    private KeptPlan kept(String id) {
        return plans.byId(id).orElseThrow(() -> new Missing("cutting plan", id));
    }
}
