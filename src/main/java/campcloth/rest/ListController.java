package campcloth.rest;

import campcloth.access.TakenOver;
import campcloth.figure.Refused;
import campcloth.outage.Outage;
import campcloth.outage.Outages;
import campcloth.supply.ListDesk;
import campcloth.supply.ListOrder;
import campcloth.supply.ListReport;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists;
import campcloth.supply.SupplierLists.Watcher;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** Suppliers' lists. */
@RestController
@Tag(
        name = "Lists",
        description = "Cloths as lists in CSV: suppliers' lists read, the catalogue and what is one's own written")
class ListController {

    private final ListDesk desk;
    private final JsonMapper json;
    private final Outages outages;

    ListController(ListDesk desk, JsonMapper json, Outages outages) {
        this.outages = outages;
        this.desk = desk;
        this.json = json;
    }

    @PostMapping(value = BodyLimit.LISTS, consumes = ListQuery.CSV)
    @Operation(
            operationId = "importCloths",
            summary = "Takes over a supplier's list, all of it or nothing; the same list again changes nothing",
            description =
                    "Columns are recognised by their heads; article number, name and composition are needed. Units come from"
                            + " the cell or the head and are never guessed. What a user changed or measured since stays. With"
                            + " Accept: application/x-ndjson (or text/event-stream) the work is told as it goes: progress, then"
                            + " every row, at the end report, or problem.",
            requestBody =
                    @RequestBody(
                            required = true,
                            content = @Content(mediaType = ListQuery.CSV, schema = @Schema(ref = "SupplierList"))))
    @ApiResponse(
            responseCode = "200",
            content = {
                @Content(
                        mediaType = MediaType.APPLICATION_JSON_VALUE,
                        schema = @Schema(implementation = ListReportBody.class)),
                @Content(
                        mediaType = MediaType.APPLICATION_NDJSON_VALUE,
                        schema = @Schema(implementation = ListReportBody.RowBody.class))
            })
    @Nullable
    ResponseEntity<?> take(
            HttpServletRequest request,
            HttpServletResponse response,
            @ParameterObject ListQuery query,
            @Parameter(hidden = true) @RequestHeader(name = HttpHeaders.ACCEPT, defaultValue = "*/*") String accept)
            throws IOException, HttpMediaTypeNotSupportedException, MissingServletRequestParameterException {
        ListOrder how = query.how();
        SupplierLists.Order order = new SupplierLists.Order(how.supplier(), query.badRows(), query.isDryRun());
        try (Spool spool = new Spool()) {
            ListQuery.spool(request, spool);
            Optional<Boolean> lines = wantsLines(accept);
            if (lines.isEmpty()) {
                return answer(order, taken(spool, how, order, Watcher.NONE));
            }
            tell(new ListEvents(response, json, lines.get()), spool, how, order);
            return null;
        }
    }

    private ListReport taken(Spool spool, ListOrder how, SupplierLists.Order order, Watcher watcher)
            throws IOException {
        return desk.take(how, order.onBadRow(), order.dryRun(), spool, watcher);
    }

    private void tell(ListEvents events, Spool spool, ListOrder how, SupplierLists.Order order) throws IOException {
        try {
            ListReport report = taken(spool, how, order, events);
            events.end("report", ListReportBody.of(order, report));
        } catch (Refused refused) {
            if (!events.hasBegun()) {
                throw refused;
            }
            events.end("problem", Problems.refused(refused));
        } catch (TakenOver elsewhere) {
            if (!events.hasBegun()) {
                throw elsewhere;
            }
            events.end("problem", Problems.keyBusy());
        } catch (RuntimeException failure) {
            Optional<Outage> outage = outages.of(failure);
            if (!events.hasBegun() || outage.isEmpty()) {
                throw failure;
            }
            events.end("problem", Problems.outage(outage.get()));
        }
    }

    private static ResponseEntity<?> answer(SupplierLists.Order order, ListReport report) {
        ListReportBody body = ListReportBody.of(order, report);
        if (report.written() || order.dryRun()) {
            return ResponseEntity.ok(body);
        }
        ProblemDetail problem = Problems.fields(
                HttpStatus.UNPROCESSABLE_CONTENT,
                "list-not-taken",
                "Rows of the list cannot be used; nothing was written",
                ListReportBody.errors(report));
        problem.setProperty("report", body);
        return ResponseEntity.unprocessableContent().body(problem);
    }

    /** Whether lines of JSON, or else events, are named as wanted; empty where neither is. */
    private static Optional<Boolean> wantsLines(String accept) {
        String kinds = accept.toLowerCase(Locale.ROOT);
        if (kinds.contains(MediaType.APPLICATION_NDJSON_VALUE)) {
            return Optional.of(true);
        }
        return kinds.contains(MediaType.TEXT_EVENT_STREAM_VALUE) ? Optional.of(false) : Optional.empty();
    }
}
