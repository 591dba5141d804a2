package campcloth.rest;

import campcloth.cloth.SwatchGuide;
import campcloth.cloth.SwatchGuide.Measuring;
import campcloth.layout.MeasuringCard;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** How to measure a cloth at home, to read and to print. */
@RestController
@RequestMapping("/api/swatches")
@Tag(name = "Swatches")
class SwatchGuideController {

    private static final MediaType SVG = MediaType.valueOf("image/svg+xml;charset=UTF-8");
    private static final int WASHES = 4;
    private static final int PAIRS = 3;

    private static final MeasuringCard CARD = new MeasuringCard(
            "Swatch card",
            List.of(
                    "Print this page at 100 %, without fitting it to the paper. Cut the paper square, lay it on the cloth"
                            + " with its arrow along the warp, and cut around it."),
            10,
            60,
            50,
            List.of(
                    "For shrinkage take a piece of 60 x 60 cm (not this square) and overcast its edges.",
                    "Mark three pairs along and three across, each 50.0 cm apart, with thread or a pen that does not wash"
                            + " out; at least 35 cm apart, 5 cm from the edges.",
                    "Measure flat and dry to 1 mm, before and after each wash; do not pull, do not iron.",
                    "New dye may run: wash it by itself. Wool felts in a machine. Hot water and irons scald."),
            Stream.concat(
                            Stream.of("cm", "before"),
                            IntStream.rangeClosed(1, WASHES).mapToObj(wash -> "after wash " + wash))
                    .toList(),
            Stream.of("warp", "weft")
                    .flatMap(way -> IntStream.rangeClosed(1, PAIRS).mapToObj(pair -> way + ", pair " + pair))
                    .toList(),
            List.of(
                    "Cloth and date",
                    "Wash: temperature, how it was moved, how it was dried",
                    "Squares, g each, and smallest step of the scale",
                    "Stack: height mm, layers, weight g, its area cm2"),
            List.of(
                    "Shrinkage in % = (before - after) / before x 100. Mass per area in g/m2 = g / cm2 x 10 000. Measured at home: a help"
                            + " in choosing and cutting, no laboratory's finding and no word on how it burns."));

    /** How to measure. */
    @Schema(name = "SwatchInstructions", description = "How to take each measurement at home")
    record Instructions(
            @Schema(description = "before any of them") List<String> first,
            List<MeasuringBody> measurements,
            @Schema(description = "a page to print") String card) {}

    /** One measurement. */
    @Schema(name = "SwatchMeasurement")
    record MeasuringBody(
            @Schema(description = "field of a swatch in which it is told")
            String field,

            String title,
            @Schema(description = "figures that come of it") List<String> gives,
            List<String> needs,
            List<String> steps,
            List<String> cautions,

            @Schema(description = "ids of sources, see /api/sources")
            List<String> sources) {

        static MeasuringBody of(Measuring measuring) {
            return new MeasuringBody(
                    measuring.field(),
                    measuring.title(),
                    measuring.gives(),
                    measuring.needs(),
                    measuring.steps(),
                    measuring.cautions(),
                    measuring.sources());
        }
    }

    @GetMapping("/instructions")
    @Operation(
            operationId = "explainSwatches",
            summary = "How to measure a swatch at home, step by step, with cautions")
    Instructions instructions() {
        return new Instructions(
                SwatchGuide.FIRST,
                SwatchGuide.ALL.stream().map(MeasuringBody::of).toList(),
                "/api/swatches/card.svg");
    }

    @GetMapping("/card.svg")
    @Operation(
            operationId = "drawSwatchCard",
            summary = "A page of A4 in true size: a square to cut around, a length to check the printer by, a table")
    @ApiResponse(
            responseCode = "200",
            description = "A page to print at 100 %",
            content = @Content(mediaType = "image/svg+xml", schema = @Schema(ref = "SwatchCard")))
    ResponseEntity<String> card() {
        return ResponseEntity.ok().contentType(SVG).body(CARD.svg());
    }
}
