package campcloth.rest;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.layout.CuttingSheet;
import campcloth.layout.LayoutDrawing;
import campcloth.plan.CuttingPlan;
import campcloth.plan.Plans;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Draws a plan that was kept, as one picture or page by page. */
@RestController
@Tag(name = "Cutting plans")
class PlanDrawingController {

    private static final MediaType SVG = MediaType.valueOf("image/svg+xml;charset=UTF-8");

    /** Paper to print on. */
    enum Paper {
        A4
    }

    private final Plans plans;

    PlanDrawingController(Plans plans) {
        this.plans = plans;
    }

    @GetMapping("/api/cutting-plans/{id}/layout.svg")
    @Operation(
            operationId = "drawCuttingPlan",
            summary = "The cutting layout as a drawing",
            description = "The whole cloth in one picture, or with paper=A4 one page of it;"
                    + " the header Link names the next and the last page.")
    @ApiResponse(
            responseCode = "200",
            description = "A drawing to scale",
            content = @Content(mediaType = "image/svg+xml", schema = @Schema(ref = "Drawing")))
    ResponseEntity<String> drawing(
            @PathVariable String id,
            @Parameter(description = "paper to print on; one picture of the whole where it is left out") @RequestParam
                    Optional<Paper> paper,
            @Parameter(
                            description = "with paper: which page, from 1; the first where it is left out",
                            schema = @Schema(type = "integer", minimum = "1"))
                    @RequestParam
                    Optional<Integer> page,
            @Parameter(
                            description = "whether to draw the layout that matches the pattern of the cloth; no where"
                                    + " it is left out")
                    @RequestParam
                    Optional<Boolean> matched) {
        CuttingPlan plan = plans.byId(id)
                .orElseThrow(() -> new Missing("cutting plan", id))
                .plan();
        CuttingSheet sheet = matched.orElse(false) ? matched(plan) : plan.sheet();
        if (paper.isPresent()) {
            return page(id, LayoutDrawing.a4Pages(sheet), page.orElse(1), matched.orElse(false));
        }
        if (page.isPresent()) {
            throw Refused.of("page", "has no meaning without paper", "give paper=A4 with it");
        }
        return ResponseEntity.ok().contentType(SVG).body(LayoutDrawing.svg(sheet));
    }

    private static CuttingSheet matched(CuttingPlan plan) {
        return plan.matchedSheet()
                .orElseThrow(() -> Refused.of(
                        "matched",
                        "has no meaning: the plan matches no pattern",
                        "leave it out, or plan with a repeat"));
    }

    private static ResponseEntity<String> page(String id, List<String> pages, int page, boolean matched) {
        new Range("page", 1, pages.size(), "(pages of this drawing)").check(page);
        String address =
                "/api/cutting-plans/" + id + "/layout.svg?paper=A4" + (matched ? "&matched=true" : "") + "&page=";
        String last = link(address + pages.size(), "last");
        return ResponseEntity.ok()
                .contentType(SVG)
                .header(HttpHeaders.LINK, page < pages.size() ? link(address + (page + 1), "next") + ", " + last : last)
                .body(pages.get(page - 1));
    }

    private static String link(String address, String relation) {
        return "<" + address + ">; rel=\"" + relation + "\"";
    }
}
