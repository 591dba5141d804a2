package campcloth.rest;

import campcloth.event.Events;
import campcloth.event.KeptEvent;
import campcloth.event.KeptRules;
import campcloth.fibre.Fibres;
import campcloth.figure.Range;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.validation.Valid;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The rules of an event on file, as they stand and as they stood. */
@RestController
@RequestMapping("/api/events/{id}/rules")
@Tag(name = "Events")
class EventRulesController {

    private static final Range VERSION = new Range("version", 0, 1e15, "(counted from 0)");

    private final Events events;
    private final Fibres fibres;

    EventRulesController(Events events, Fibres fibres) {
        this.events = events;
        this.fibres = fibres;
    }

    @GetMapping
    @Operation(
            operationId = "getRules",
            summary = "The rules of an event",
            description = "With where they differ and what stands there, and the authorities that have none on file.")
    ResponseEntity<RulesBody> one(
            @PathVariable String id,
            @Parameter(
                            description =
                                    "version of the event whose rules are sought; the newest where it is left out",
                            schema = @Schema(type = "integer", format = "int64", minimum = "0"))
                    @RequestParam
                    Optional<Long> version) {
        version.ifPresent(VERSION::check);
        KeptEvent event = EventController.kept(events, id);
        return answer(id, version.orElse(event.version()));
    }

    @GetMapping("/versions")
    @Operation(operationId = "listRuleVersions", summary = "The versions of an event's rules, newest first")
    RulesHistoryBody versions(@PathVariable String id) {
        return events.rulesHistory(id, RulesHistoryBody.MOST)
                .map(history -> RulesHistoryBody.of(id, history))
                .orElseThrow(() -> new Missing("event", id));
    }

    @PutMapping
    @Operation(
            operationId = "replaceRules",
            summary = "Replaces only the rules of an event; If-Match must carry the ETag that was read")
    ResponseEntity<RulesBody> replace(
            @PathVariable String id,
            @RequestHeader(value = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @Valid @RequestBody RulesBody body) {
        KeptEvent before = EventController.kept(events, id);
        long expected = Versions.expected(ifMatch, before.version());
        body.isOf(id);
        Events.Change change =
                events.replace(id, expected, before.event().withRules(RuleBody.rules(body.rules(), fibres)));
        return answer(id, EventController.done(id, change).version());
    }

    private ResponseEntity<RulesBody> answer(String id, long version) {
        KeptRules kept =
                events.rulesAt(id, version).orElseThrow(() -> new Missing("version " + version + " of an event", id));
        return ResponseEntity.ok().eTag(Versions.etag(version)).body(RulesBody.of(kept, fibres));
    }
}
