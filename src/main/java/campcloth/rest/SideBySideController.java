package campcloth.rest;

import campcloth.cloth.Cloths;
import campcloth.fibre.Fibres;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Sets the figures of several cloths side by side. */
@RestController
@Tag(name = "Cloths")
class SideBySideController {

    private final Cloths cloths;
    private final Fibres fibres;

    SideBySideController(Cloths cloths, Fibres fibres) {
        this.cloths = cloths;
        this.fibres = fibres;
    }

    @PostMapping("/api/cloths/comparison")
    @Operation(
            operationId = "setSideBySide",
            summary = "The figures of 2 to 12 cloths side by side, and where they clearly differ",
            description = "What the same garments cost from each cloth is another question: ask"
                    + " /api/cutting-plans/comparison. Nothing is kept.")
    SideBySideAnswer compare(@Valid @RequestBody SideBySideRequest request) {
        return SideBySideAnswer.of(request.cloths(cloths, fibres), request);
    }
}
