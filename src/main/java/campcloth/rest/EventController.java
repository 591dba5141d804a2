package campcloth.rest;

import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.Seasons;
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

/** The events on file. */
@RestController
@RequestMapping("/api/events")
@Tag(name = "Events", description = "Weather, activity, fires and rules of an event")
class EventController {

    private final Events events;
    private final Seasons seasons;
    private final Fibres fibres;

    EventController(Events events, Seasons seasons, Fibres fibres) {
        this.events = events;
        this.seasons = seasons;
        this.fibres = fibres;
    }

    @PostMapping
    @Operation(operationId = "addEvent", summary = "Files an event")
    @ApiResponse(responseCode = "201", description = "The event as it is kept", useReturnTypeSchema = true)
    ResponseEntity<EventBody> add(@Valid @RequestBody EventBody body) {
        KeptEvent kept = events.add(body.event(seasons, fibres));
        return ResponseEntity.created(URI.create("/api/events/" + kept.id()))
                .eTag(Versions.etag(kept.version()))
                .body(EventBody.of(kept));
    }

    @GetMapping("/{id}")
    @Operation(operationId = "getEvent", summary = "One event")
    ResponseEntity<EventBody> one(@PathVariable String id) {
        return answer(kept(id));
    }

    @PutMapping("/{id}")
    @Operation(operationId = "replaceEvent", summary = "Replaces an event; If-Match must carry the ETag that was read")
    ResponseEntity<EventBody> replace(
            @PathVariable String id,
            @RequestHeader(value = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @Valid @RequestBody EventBody body) {
        long expected = Versions.expected(ifMatch, kept(id).version());
        body.isNamed(id);
        return answer(done(id, events.replace(id, expected, body.event(seasons, fibres))));
    }

    @DeleteMapping("/{id}")
    @Operation(operationId = "removeEvent", summary = "Removes an event; If-Match must carry the ETag that was read")
    @ApiResponse(responseCode = "204", description = "Removed")
    ResponseEntity<Void> remove(
            @PathVariable String id,
            @RequestHeader(value = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch) {
        done(id, events.remove(id, Versions.expected(ifMatch, kept(id).version())));
        return ResponseEntity.noContent().build();
    }

    private KeptEvent kept(String id) {
        return kept(events, id);
    }

    static KeptEvent kept(Events events, String id) {
        return events.byId(id).orElseThrow(() -> new Missing("event", id));
    }

    static KeptEvent done(String id, Events.Change change) {
        if (change instanceof Events.Change.Stale stale) {
            throw Precondition.stale(stale.actualVersion());
        }
        if (change instanceof Events.Change.Done done) {
            return done.event();
        }
        throw new Missing("event", id);
    }

    private static ResponseEntity<EventBody> answer(KeptEvent kept) {
        return ResponseEntity.ok().eTag(Versions.etag(kept.version())).body(EventBody.of(kept));
    }
}
