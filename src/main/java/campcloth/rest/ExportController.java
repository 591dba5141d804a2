package campcloth.rest;

import campcloth.cloth.KeptCloth.Origin;
import campcloth.supply.Spool;
import campcloth.supply.SupplierLists;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.springframework.http.HttpHeaders;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** What is kept, to take away: written to disk first, so that a slow client holds no connection to the database. */
@RestController
@Tag(name = "Lists")
class ExportController {

    private static final String README = """
            What Campcloth keeps that is your own.

            cloths.csv   cloths that you added or changed, each figure as value (low..high) BASIS source;
                         POST /api/cloths/import?supplier=NAME reads it again
            events.json  events with spells, fires and rules, as POST /api/events takes them without their id
            plans.json   cutting plans as GET /api/cutting-plans/{id} answers
            swatches.json  what you measured on pieces of a cloth; "swatch" is what
                         POST /api/cloths/{clothId}/swatches takes
            errands.json  plan sheets: a garment for an event from a cloth, both as they were; its plan is in plans.json

            Other files hold what was kept besides, named by what they hold.
            """;

    private final SupplierLists lists;
    private final List<ExportPart> parts;

    ExportController(SupplierLists lists, List<ExportPart> parts) {
        this.lists = lists;
        this.parts = parts;
    }

    @GetMapping("/api/cloths/export")
    @Operation(
            operationId = "exportCloths",
            summary = "The catalogue as a list in CSV, to be read again",
            description =
                    "Every figure whole, with interval, basis and source. A cell that a spreadsheet would run as a formula"
                            + " begins with an apostrophe, which reading takes off again.")
    @ApiResponse(responseCode = "200", content = @Content(mediaType = "text/csv", schema = @Schema(ref = "ClothList")))
    void cloths(
            @Parameter(description = "only cloths that come from there; all of them where it is left out") @RequestParam
                    Optional<Origin> origin,
            HttpServletResponse response)
            throws IOException {
        Set<Origin> origins = origin.<Set<Origin>>map(EnumSet::of).orElse(EnumSet.allOf(Origin.class));
        try (Spool spool = new Spool()) {
            OutputStream out = new BufferedOutputStream(spool.out());
            ExportParts.cloths(lists, origins, out);
            out.flush();
            send(spool, response, "text/csv;charset=UTF-8", "cloths.csv");
        }
    }

    @GetMapping("/api/export")
    @Operation(
            operationId = "exportOwn",
            summary = "All that is one's own as one ZIP file: cloths, events with rules, plans, swatches",
            description = "Cloths in CSV that can be read again, all else in JSON as this service answers it.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(mediaType = "application/zip", schema = @Schema(ref = "Export")))
    void own(HttpServletResponse response) throws IOException {
        try (Spool spool = new Spool()) {
            ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(spool.out()));
            zip.putNextEntry(new ZipEntry("README.txt"));
            zip.write(README.getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
            for (ExportPart part : parts) {
                zip.putNextEntry(new ZipEntry(part.file()));
                part.write(zip);
                zip.closeEntry();
            }
            zip.finish();
            zip.flush();
            send(spool, response, "application/zip", "campcloth.zip");
        }
    }

    private static void send(Spool spool, HttpServletResponse response, String type, String name) throws IOException {
        response.setContentType(type);
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"");
        response.setContentLengthLong(spool.size());
        spool.in().transferTo(response.getOutputStream());
    }
}
