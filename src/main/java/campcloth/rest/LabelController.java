package campcloth.rest;

import campcloth.fibre.LabelReader;
import campcloth.fibre.LabelReading;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Reads fibre-content labels. */
@RestController
@Tag(name = "Labels", description = "Fibre-content labels, read or refused, never guessed")
class LabelController {

    /** A label as it stands on the cloth. */
    record LabelRequest(
            @Schema(example = "70% linen 30% polyester") @NotNull
            String text,

            @Schema(
                    description = "ISO 639-1 key of the label's language; settles words that languages understand"
                            + " differently, nothing else. One of cs, da, de, en, es, fi, fr, it, nl, no, pl, pt, sv")
            @Nullable
            String language) {}

    /** One part of a label. */
    @Schema(name = "LabelPart")
    record PartBody(String part, List<ShareBody> blend) {}

    /** What the label says. */
    @Schema(name = "LabelReading")
    record LabelBody(List<PartBody> parts, List<String> notes) {}

    private final LabelReader reader;

    LabelController(LabelReader reader) {
        this.reader = reader;
    }

    @PostMapping("/api/labels")
    @Operation(
            operationId = "readLabel",
            summary = "Reads a fibre-content label; 422 with the place where it cannot be read without guessing")
    @ApiResponse(
            responseCode = "200",
            description = "What the label says, part by part",
            content = @Content(schema = @Schema(implementation = LabelBody.class)))
    ResponseEntity<?> read(@Valid @RequestBody LabelRequest request) {
        String language = request.language();
        LabelReading reading = language == null ? reader.read(request.text()) : reader.read(request.text(), language);
        if (reading instanceof LabelReading.NotRead notRead) {
            return ResponseEntity.unprocessableContent().body(problem(notRead));
        }
        LabelReading.Read read = (LabelReading.Read) reading;
        List<PartBody> parts = read.parts().stream()
                .map(part -> new PartBody(part.part(), ShareBody.of(part.blend())))
                .toList();
        return ResponseEntity.ok(new LabelBody(parts, read.notes()));
    }

    private static ProblemDetail problem(LabelReading.NotRead notRead) {
        FieldError error = new FieldError("text", notRead.because() + "; " + notRead.remedy());
        ProblemDetail problem = Problems.fields(
                HttpStatus.UNPROCESSABLE_CONTENT,
                "label-not-read",
                "The label cannot be read without guessing",
                List.of(error));
        problem.setProperty("from", notRead.from());
        problem.setProperty("to", notRead.to());
        problem.setProperty("place", notRead.place());
        problem.setProperty("readings", notRead.readings());
        return problem;
    }
}
