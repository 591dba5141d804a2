package campcloth.rest;

import campcloth.cloth.Cloths;
import campcloth.cloth.KeptSwatch;
import campcloth.cloth.Property;
import campcloth.cloth.Swatch;
import campcloth.cloth.SwatchHistory;
import campcloth.cloth.Swatches;
import campcloth.cloth.Swatches.Outcome;
import campcloth.cloth.WindReference;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.net.URI;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/**
 * Measured swatches of a cloth. No If-Match: a swatch is added to those that are there and overwrites none, and one that is
 * removed is named by an id that is never used again.
 */
@RestController
@RequestMapping("/api/cloths/{id}/swatches")
@Tag(name = "Swatches", description = "Measuring a cloth at home: its figures become measured ones")
class SwatchController {

    /** The swatches of a cloth. */
    @Schema(name = "SwatchHistory", description = "The swatches of a cloth, newest first")
    record HistoryBody(
            String clothId,

            @Schema(description = "by the day of the measurement, then by the order they were told")
            List<SwatchAnswer> swatches,

            @Schema(description = "figures that are known without any swatch; they come back when the swatches go")
            Map<String, FigureBody> withoutSwatches) {}

    private final Swatches swatches;
    private final Cloths cloths;
    private final Clock clock;

    SwatchController(Swatches swatches, Cloths cloths, Clock clock) {
        this.swatches = swatches;
        this.cloths = cloths;
        this.clock = clock;
    }

    @PostMapping
    @Operation(
            operationId = "addSwatch",
            summary = "Tells a measured swatch; what follows from it becomes the cloth's measured figures",
            description =
                    "Mass per area, shrinkage along and across (the total after the last wash measured), thickness,"
                            + " air permeability beside a known cloth, each with the interval that its readings allow. The cloth's"
                            + " version goes up; a cloth of the catalogue files then stays as it is measured when a newer catalogue"
                            + " comes. At most 100 swatches of a cloth are kept.")
    @ApiResponse(responseCode = "201", description = "The swatch and what follows", useReturnTypeSchema = true)
    ResponseEntity<SwatchAnswer> add(@PathVariable String id, @Valid @RequestBody SwatchBody body) {
        if (cloths.byId(id).isEmpty()) {
            throw new Missing("cloth", id);
        }
        Swatch swatch = body.swatch(LocalDate.now(clock), reference -> WindReference.kept(cloths, id, reference));
        Outcome.Done done = done(id, "", swatches.add(id, swatch));
        KeptSwatch kept = done.swatch();
        return ResponseEntity.created(URI.create("/api/cloths/" + kept.clothId() + "/swatches/" + kept.id()))
                .body(SwatchAnswer.of(kept, history(id)));
    }

    @GetMapping
    @Operation(operationId = "listSwatches", summary = "The swatches of a cloth, newest first")
    HistoryBody all(@PathVariable String id) {
        SwatchHistory history = history(id);
        Map<String, FigureBody> without = new LinkedHashMap<>();
        for (Property property : Property.values()) {
            if (history.before().containsKey(property)) {
                without.put(property.field(), FigureBody.of(history.before().get(property), property.unit()));
            }
        }
        return new HistoryBody(
                id,
                history.newestFirst().stream()
                        .map(kept -> SwatchAnswer.of(kept, history))
                        .toList(),
                without);
    }

    @GetMapping("/{swatchId}")
    @Operation(operationId = "getSwatch", summary = "One swatch and what follows from it")
    SwatchAnswer one(@PathVariable String id, @PathVariable String swatchId) {
        SwatchHistory history = history(id);
        return history.byId(swatchId)
                .map(kept -> SwatchAnswer.of(kept, history))
                .orElseThrow(() -> new Missing("swatch", swatchId));
    }

    @DeleteMapping("/{swatchId}")
    @Operation(
            operationId = "removeSwatch",
            summary =
                    "Removes a mistaken swatch; figures fall back to the swatch before it, or to what was known before")
    @ApiResponse(responseCode = "204", description = "Removed")
    ResponseEntity<Void> remove(@PathVariable String id, @PathVariable String swatchId) {
        done(id, swatchId, swatches.remove(id, swatchId));
        return ResponseEntity.noContent().build();
    }

    private SwatchHistory history(String id) {
        return swatches.of(id).orElseThrow(() -> new Missing("cloth", id));
    }

    private static Outcome.Done done(String id, String swatchId, Outcome outcome) {
        if (outcome instanceof Outcome.Done done) {
            return done;
        }
        if (outcome instanceof Outcome.Full full) {
            throw full.refused();
        }
        throw outcome instanceof Outcome.NoSwatch ? new Missing("swatch", swatchId) : new Missing("cloth", id);
    }
}
