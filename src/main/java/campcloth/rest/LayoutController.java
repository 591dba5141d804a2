package campcloth.rest;

import campcloth.job.LayoutGate;
import campcloth.layout.Progress;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** The packing by itself: free outlines on a width of cloth. */
@RestController
@Tag(name = "Layouts", description = "The packing by itself: free outlines on a width of cloth")
class LayoutController {

    private final LayoutGate gate;

    private final JsonMapper json;

    LayoutController(LayoutGate gate, JsonMapper json) {
        this.gate = gate;
        this.json = json;
    }

    @PostMapping("/api/layouts")
    @Operation(
            operationId = "layOut",
            summary = "Lays outlines on a width of cloth so that they take little length",
            description =
                    "Every copy lies within the cloth, turned and mirrored only as it may be, and overlaps no other."
                            + " Short, not proven shortest, unless the length equals the lower bound. Only so many layouts are"
                            + " searched at the same time as there are processors. With Accept:"
                            + " text/event-stream the search is told as it runs: an event named better for each better length"
                            + " (lengthCm, usedPercent, seconds since the search began), at the end one named layout with the"
                            + " answer as JSON would give it. A client that goes away ends the search.")
    @ApiResponse(
            responseCode = "200",
            content = {
                @Content(
                        mediaType = MediaType.APPLICATION_JSON_VALUE,
                        schema = @Schema(implementation = LayoutAnswer.class)),
                @Content(
                        mediaType = MediaType.TEXT_EVENT_STREAM_VALUE,
                        schema = @Schema(implementation = LayoutEvents.Better.class))
            })
    @Nullable
    LayoutAnswer layOut(
            @Valid @RequestBody LayoutRequest request,
            @Parameter(hidden = true) @RequestHeader(name = HttpHeaders.ACCEPT, defaultValue = "*/*") String accept,
            HttpServletResponse response) {
        if (!wantsEvents(accept)) {
            return gate.through(() -> LayoutAnswer.of(request.laidOut(Progress.NONE)));
        }
        LayoutEvents events = new LayoutEvents(response, json);
        events.end(gate.through(() -> LayoutAnswer.of(request.laidOut(events))));
        return null;
    }

    /** Whether events are named as wanted, and JSON not before them. */
    private static boolean wantsEvents(String accept) {
        String kinds = accept.toLowerCase(Locale.ROOT);
        int events = kinds.indexOf(MediaType.TEXT_EVENT_STREAM_VALUE);
        int plain = kinds.indexOf(MediaType.APPLICATION_JSON_VALUE);
        return events >= 0 && (plain < 0 || events < plain);
    }
}
