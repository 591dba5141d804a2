package campcloth.rest;

import campcloth.access.ShareKey;
import campcloth.access.Shares;
import campcloth.access.ThingKind;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/**
 * Sharing by a link, and handing over to everybody. No If-Match: to whom a thing belongs and who reads it is no part of what it says,
 * and asking twice comes to the same as asking once.
 */
@RestController
class ShareController {

    private static final String SHARED =
            "The same link until it is taken back. Whoever has it reads without an account and"
                    + " changes nothing; a marshal who has an event's link may change its rules.";
    private static final String OVER =
            "It then belongs to nobody: everybody reads it, a keeper changes it (a marshal where it"
                    + " is an event). What is common already stays so.";
    private static final String EVENTS = "Events";
    private static final String CLOTHS = "Cloths";
    private static final String PLANS = "Cutting plans";

    /** A link. */
    @Schema(
            name = "SharedLink",
            description = "By which a thing is shared, to be put behind the address of this service")
    record LinkBody(
            @Schema(description = "for people") String link,

            @Schema(description = "for programs") String apiLink) {

        /** A plan has no page of its own; people are shown its layout. */
        static LinkBody of(ThingKind kind, String id, ShareKey key) {
            String path = switch (kind) {
                case EVENT -> "/events/" + id;
                case CLOTH -> "/cloths/" + id;
                case SHEET -> "/sheets/" + id;
                case CUTTING_PLAN -> "/api/cutting-plans/" + id;
            };
            boolean hasPage = kind != ThingKind.CUTTING_PLAN;
            String shown = "?key=" + key.text();
            return new LinkBody(
                    (hasPage ? path : path + "/layout.svg") + shown, (hasPage ? "/api" + path : path) + shown);
        }
    }

    private final Shares shares;

    ShareController(Shares shares) {
        this.shares = shares;
    }

    @PostMapping("/api/events/{id}/share")
    @Tag(name = EVENTS)
    @Operation(operationId = "shareEvent", summary = "Shares an event by a link", description = SHARED)
    LinkBody shareEvent(@PathVariable String id) {
        return share(ThingKind.EVENT, id);
    }

    @DeleteMapping("/api/events/{id}/share")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    @Tag(name = EVENTS)
    @Operation(operationId = "unshareEvent", summary = "Takes the link of an event back; it opens nothing from then on")
    @ApiResponse(responseCode = "204", description = "Shared by no link")
    void unshareEvent(@PathVariable String id) {
        unshare(ThingKind.EVENT, id);
    }

    @PostMapping("/api/events/{id}/hand-over")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    @Tag(name = EVENTS)
    @Operation(
            operationId = "handEventOver",
            summary = "A marshal makes an event of their own common",
            description = OVER)
    @ApiResponse(responseCode = "204", description = "Common")
    void handEventOver(@PathVariable String id) {
        handOver(ThingKind.EVENT, id);
    }

    @PostMapping("/api/cloths/{id}/share")
    @Tag(name = CLOTHS)
    @Operation(operationId = "shareCloth", summary = "Shares a cloth by a link", description = SHARED)
    LinkBody shareCloth(@PathVariable String id) {
        return share(ThingKind.CLOTH, id);
    }

    @DeleteMapping("/api/cloths/{id}/share")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    @Tag(name = CLOTHS)
    @Operation(operationId = "unshareCloth", summary = "Takes the link of a cloth back; it opens nothing from then on")
    @ApiResponse(responseCode = "204", description = "Shared by no link")
    void unshareCloth(@PathVariable String id) {
        unshare(ThingKind.CLOTH, id);
    }

    @PostMapping("/api/cloths/{id}/hand-over")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    @Tag(name = CLOTHS)
    @Operation(
            operationId = "handClothOver",
            summary = "A keeper gives a cloth of their own to the shared catalogue",
            description = OVER)
    @ApiResponse(responseCode = "204", description = "Common")
    void handClothOver(@PathVariable String id) {
        handOver(ThingKind.CLOTH, id);
    }

    @PostMapping("/api/cutting-plans/{id}/share")
    @Tag(name = PLANS)
    @Operation(operationId = "shareCuttingPlan", summary = "Shares a cutting plan by a link", description = SHARED)
    LinkBody sharePlan(@PathVariable String id) {
        return share(ThingKind.CUTTING_PLAN, id);
    }

    @DeleteMapping("/api/cutting-plans/{id}/share")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    @Tag(name = PLANS)
    @Operation(
            operationId = "unshareCuttingPlan",
            summary = "Takes the link of a cutting plan back; it opens nothing from then on")
    @ApiResponse(responseCode = "204", description = "Shared by no link")
    void unsharePlan(@PathVariable String id) {
        unshare(ThingKind.CUTTING_PLAN, id);
    }

    private LinkBody share(ThingKind kind, String id) {
        return shares.share(kind, id).map(key -> LinkBody.of(kind, id, key)).orElseThrow(() -> missing(kind, id));
    }

    private void unshare(ThingKind kind, String id) {
        if (!shares.unshare(kind, id)) {
            throw missing(kind, id);
        }
    }

    private void handOver(ThingKind kind, String id) {
        if (!shares.handOver(kind, id)) {
            throw missing(kind, id);
        }
    }

    private static Missing missing(ThingKind kind, String id) {
        return new Missing(kind.words(), id);
    }
}
