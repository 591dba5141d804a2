package campcloth.rest;

import campcloth.comfort.BareModels;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** The comfort models by themselves: one surrounding, one clothing. */
@RestController
@Tag(name = "Comfort", description = "The comfort models by themselves: one surrounding, one clothing")
class ComfortController {

    @PostMapping("/api/comfort")
    @Operation(
            operationId = "readComfort",
            summary = "The heat balance for one surrounding and clothing, after each model",
            description = "No model is used outside its range: there is null instead of a number, and the reason in"
                    + " outOfRange.")
    ComfortAnswer read(@Valid @RequestBody ComfortRequest request) {
        return ComfortAnswer.of(BareModels.of(request.bareCase()), request.presumed());
    }
}
