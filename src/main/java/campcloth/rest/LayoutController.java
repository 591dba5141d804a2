package campcloth.rest;

import campcloth.layout.Effort;
import campcloth.layout.Nesting;
import campcloth.layout.Strip;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The packing by itself: free outlines on a width of cloth. */
@RestController
@Tag(name = "Layouts", description = "The packing by itself: free outlines on a width of cloth")
class LayoutController {

    private final LayoutGate gate;

    LayoutController(LayoutGate gate) {
        this.gate = gate;
    }

    @PostMapping("/api/layouts")
    @Operation(
            operationId = "layOut",
            summary = "Lays outlines on a width of cloth so that they take little length",
            description =
                    "Every copy lies within the cloth, turned and mirrored only as it may be, and overlaps no other."
                            + " Short, not proven shortest, unless the length equals the lower bound. Only so many layouts are"
                            + " searched at the same time as there are processors.")
    LayoutAnswer layOut(@Valid @RequestBody LayoutRequest request) {
        Strip strip = request.strip();
        Effort effort = request.effort();
        return gate.through(() -> LayoutAnswer.of(Nesting.layout(strip, request.toLay(), effort)));
    }
}
