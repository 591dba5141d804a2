package campcloth.rest;

import campcloth.fibre.Fibre;
import campcloth.fibre.FibreFamily;
import campcloth.fibre.Fibres;
import campcloth.figure.Figure;
import campcloth.figure.Source;
import campcloth.figure.Sources;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The fibres known and the sources of what is said about them. */
@RestController
@Tag(name = "Fibres", description = "What cloth is spun from, and where the figures come from")
class FibreController {

    /** A fibre with its figures by name. */
    @Schema(name = "Fibre")
    record FibreBody(
            String key,
            String name,
            FibreFamily family,
            boolean meltable,
            Map<String, FigureBody> figures,
            String inTheFlame) {}

    /** All fibres. */
    @Schema(name = "Fibres")
    record FibresBody(List<FibreBody> fibres) {}

    /** All sources. */
    @Schema(name = "Sources")
    record SourcesBody(List<Source> sources) {}

    private final Fibres fibres;
    private final Sources sources;

    FibreController(Fibres fibres, Sources sources) {
        this.fibres = fibres;
        this.sources = sources;
    }

    @GetMapping("/api/fibres")
    @Operation(
            operationId = "listFibres",
            summary = "The fibres known, each with its properties and the source of each figure")
    FibresBody fibres() {
        return new FibresBody(fibres.all().stream().map(FibreController::body).toList());
    }

    @GetMapping("/api/sources")
    @Operation(operationId = "listSources", summary = "The sources that figures cite, with how far each text was seen")
    SourcesBody sources() {
        return new SourcesBody(sources.all());
    }

    private static FibreBody body(Fibre fibre) {
        Map<String, FigureBody> figures = new LinkedHashMap<>();
        put(figures, "agreedAllowancePercent", fibre.agreedAllowancePercent(), "% of dry mass");
        put(figures, "densityGCm3", Optional.of(fibre.densityGCm3()), "g/cm3");
        put(figures, "regainPercent", Optional.of(fibre.regainPercent()), "% of dry mass");
        put(figures, "softensC", fibre.softensC(), "degrees Celsius");
        put(figures, "meltsC", fibre.meltsC(), "degrees Celsius");
        put(figures, "decomposesC", fibre.decomposesC(), "degrees Celsius");
        put(figures, "oxygenIndexPercent", fibre.oxygenIndexPercent(), "% by volume");
        put(figures, "diameterUm", fibre.diameterUm(), "um");
        put(figures, "modulusGPa", fibre.modulusGPa(), "GPa");
        return new FibreBody(
                fibre.key(),
                fibre.name(),
                fibre.family(),
                fibre.family().countsAsMeltable(),
                figures,
                fibre.inTheFlame());
    }

    private static void put(Map<String, FigureBody> figures, String name, Optional<Figure> figure, String unit) {
        figure.ifPresent(known -> figures.put(name, FigureBody.of(known, unit)));
    }
}
