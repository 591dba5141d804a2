package campcloth.rest;

import campcloth.cloth.Cloths;
import campcloth.cloth.KeptCloth;
import campcloth.fibre.Fibres;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** The catalogue of cloths. */
@RestController
@RequestMapping("/api/cloths")
@Tag(name = "Cloths", description = "The catalogue: cloths from the catalogue files and those that users add")
class ClothController {

    private final Cloths cloths;
    private final Fibres fibres;

    ClothController(Cloths cloths, Fibres fibres) {
        this.cloths = cloths;
        this.fibres = fibres;
    }

    @GetMapping("/{id}")
    @Operation(operationId = "getCloth", summary = "One cloth, with every figure, its basis and its source")
    ResponseEntity<ClothBody> one(@PathVariable String id) {
        return answer(kept(id));
    }

    @PostMapping
    @Operation(operationId = "addCloth", summary = "Adds a cloth of one's own")
    @ApiResponse(responseCode = "201", description = "The cloth as it is kept", useReturnTypeSchema = true)
    ResponseEntity<ClothBody> add(@Valid @RequestBody ClothBody body) {
        KeptCloth kept = cloths.add(body.cloth(fibres));
        return ResponseEntity.created(URI.create("/api/cloths/" + kept.id()))
                .eTag(Versions.etag(kept.version()))
                .body(ClothBody.of(kept));
    }

    @PutMapping("/{id}")
    @Operation(
            operationId = "replaceCloth",
            summary = "Replaces a cloth; If-Match must carry the ETag that was read",
            description = "What its swatches measured stays; a declared or weaker figure in its place is kept for when"
                    + " the swatches are removed.")
    ResponseEntity<ClothBody> replace(
            @PathVariable String id,
            @RequestHeader(value = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @Valid @RequestBody ClothBody body) {
        KeptCloth before = kept(id);
        long expected = Versions.expected(ifMatch, before.version());
        return answer(done(id, cloths.replace(id, expected, body.replacing(before, fibres))));
    }

    @DeleteMapping("/{id}")
    @Operation(operationId = "removeCloth", summary = "Removes a cloth; a newer catalogue does not bring it back")
    @ApiResponse(responseCode = "204", description = "Removed")
    ResponseEntity<Void> remove(
            @PathVariable String id,
            @RequestHeader(value = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        done(id, cloths.remove(id, Versions.expected(ifMatch, kept(id).version())));
        return ResponseEntity.noContent().build();
    }

    private KeptCloth kept(String id) {
        return cloths.byId(id).orElseThrow(() -> new Missing("cloth", id));
    }

    private static KeptCloth done(String id, Cloths.Change change) {
        if (change instanceof Cloths.Change.Stale stale) {
            throw Precondition.stale(stale.actualVersion());
        }
        if (change instanceof Cloths.Change.Done done) {
            return done.cloth();
        }
        throw new Missing("cloth", id);
    }

    private static ResponseEntity<ClothBody> answer(KeptCloth kept) {
        return ResponseEntity.ok().eTag(Versions.etag(kept.version())).body(ClothBody.of(kept));
    }
}
