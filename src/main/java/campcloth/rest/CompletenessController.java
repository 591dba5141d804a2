package campcloth.rest;

import campcloth.cloth.Cloths;
import campcloth.cloth.Completeness;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** How much is known of the cloths of the catalogue. */
@RestController
@Tag(name = "Cloths")
class CompletenessController {

    private final Cloths cloths;

    CompletenessController(Cloths cloths) {
        this.cloths = cloths;
    }

    @GetMapping("/api/cloths/completeness")
    @Operation(
            operationId = "showCompleteness",
            summary = "How each figure is known over the catalogue, and which cloths are most worth measuring")
    CompletenessAnswer of(
            @Parameter(
                            description = "how many cloths that are worth measuring",
                            schema = @Schema(type = "integer", minimum = "0", maximum = "100", defaultValue = "10"))
                    @RequestParam(defaultValue = "10")
                    int limit) {
        return CompletenessAnswer.of(Completeness.of(cloths, limit));
    }
}
