package campcloth.rest;

import campcloth.cloth.Alike;
import campcloth.cloth.Cloth;
import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.fibre.Fibres;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** Cloths that are most like a cloth, and what is known of them. */
@RestController
@Tag(name = "Cloths")
class AlikeController {

    private final Cloths cloths;
    private final Fibres fibres;

    AlikeController(Cloths cloths, Fibres fibres) {
        this.cloths = cloths;
        this.fibres = fibres;
    }

    @GetMapping("/api/cloths/{id}/alike")
    @Operation(
            operationId = "findAlike",
            summary = "The cloths most like a cloth of the catalogue, and what is known of them")
    AlikeAnswer of(
            @PathVariable String id,
            @Parameter(
                            description = "how many neighbours",
                            schema = @Schema(type = "integer", minimum = "1", maximum = "50", defaultValue = "5"))
                    @RequestParam(defaultValue = "5")
                    int limit) {
        KeptCloth asked = cloths.byId(id).orElseThrow(() -> new Missing("cloth", id));
        return AlikeAnswer.of(asked.cloth(), Alike.to(asked, cloths, limit));
    }

    @PostMapping("/api/cloths/alike")
    @Operation(
            operationId = "findAlikeUnsaved",
            summary = "The cloths most like a cloth that is not kept, and what is known of them",
            description = "Nothing is kept.")
    AlikeAnswer of(
            @Parameter(
                            description = "how many neighbours",
                            schema = @Schema(type = "integer", minimum = "1", maximum = "50", defaultValue = "5"))
                    @RequestParam(defaultValue = "5")
                    int limit,
            @Valid @RequestBody ClothBody body) {
        Cloth asked = body.cloth(fibres);
        return AlikeAnswer.of(asked, Alike.to(asked, cloths, limit));
    }
}
