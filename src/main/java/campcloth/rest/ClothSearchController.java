package campcloth.rest;

import campcloth.cloth.ClothSearch;
import campcloth.cloth.Cloths;
import campcloth.cloth.WeightClass;
import campcloth.event.Season;
import campcloth.fibre.Fibres;
import campcloth.figure.Range;
import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.fire.FireGrade;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.ArraySchema;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The search in the catalogue. */
@RestController
@RequestMapping("/api/cloths")
@Tag(name = "Cloths")
class ClothSearchController {

    private static final Range PAGE = new Range("page", 0, 1_000_000, "(counted from 0)");
    private static final Range SIZE = new Range("size", 1, 500, "cloths a page");

    private final Cloths cloths;
    private final Fibres fibres;

    ClothSearchController(Cloths cloths, Fibres fibres) {
        this.cloths = cloths;
        this.fibres = fibres;
    }

    @GetMapping
    @Operation(
            operationId = "searchCloths",
            summary = "Searches the catalogue, a page at a time: the best match first, without words by name",
            description =
                    "Of several values of one parameter any will do; all parameters together have to hold. Season and fire grade"
                            + " are computed for a loose tunic over a shirt, its wearer seated two metres from a fire of unknown"
                            + " size: they narrow a search and are no advice for an event, whose rules always win.")
    ClothPage page(
            @Parameter(
                            description =
                                    "words, all of which stand in the name, the composition or the note, the last perhaps only"
                                            + " begun; where no cloth has them all, the cloths named most alike are"
                                            + " answered (nearMatches), 200 of them at most, and only these are counted; the text"
                                            + " has at most 200 characters")
                    @RequestParam
                    Optional<String> text,
            @Parameter(description = "key of a fibre that the blend contains; may be repeated")
                    @RequestParam(defaultValue = "")
                    List<String> fibre,
            @Parameter(
                            description = "lightest cloth sought",
                            schema = @Schema(type = "number", minimum = "0", maximum = "10000"))
                    @RequestParam
                    Optional<Double> minWeightGsm,
            @Parameter(
                            description = "heaviest cloth sought",
                            schema = @Schema(type = "number", minimum = "0", maximum = "10000"))
                    @RequestParam
                    Optional<Double> maxWeightGsm,
            @Parameter(
                            description =
                                    "under 130 g/m2 LIGHT, under 250 MEDIUM, under 400 HEAVY, else VERY_HEAVY (a project"
                                            + " choice); may be repeated",
                            array = @ArraySchema(schema = @Schema(implementation = WeightClass.class)))
                    @RequestParam(defaultValue = "")
                    List<String> weightClass,
            @Parameter(
                            description = "season that the cloth suits; may be repeated",
                            array = @ArraySchema(schema = @Schema(implementation = Season.class)))
                    @RequestParam(defaultValue = "")
                    List<String> season,
            @Parameter(
                            description = "fire grade; may be repeated",
                            array = @ArraySchema(schema = @Schema(implementation = FireGrade.class)))
                    @RequestParam(defaultValue = "")
                    List<String> fireGrade,
            @Parameter(
                            description = "cheapest cloth sought, EUR/m",
                            schema = @Schema(type = "number", minimum = "0", maximum = "10000"))
                    @RequestParam
                    Optional<Double> minPricePerMetre,
            @Parameter(
                            description = "dearest cloth sought, EUR/m",
                            schema = @Schema(type = "number", minimum = "0", maximum = "10000"))
                    @RequestParam
                    Optional<Double> maxPricePerMetre,
            @Parameter(
                            description = "counted from 0",
                            schema = @Schema(type = "integer", minimum = "0", maximum = "1000000", defaultValue = "0"))
                    @RequestParam(defaultValue = "0")
                    int page,
            @Parameter(
                            description = "cloths a page",
                            schema = @Schema(type = "integer", minimum = "1", maximum = "500", defaultValue = "50"))
                    @RequestParam(defaultValue = "50")
                    int size) {
        PAGE.check(page);
        SIZE.check(size);
        ClothSearch search = new ClothSearch(
                text.filter(words -> !words.isBlank()),
                fibre.stream().map(key -> fibres.require(key, "fibre").key()).collect(Collectors.toSet()),
                minWeightGsm,
                maxWeightGsm,
                Set.copyOf(named("weightClass", WeightClass.values(), weightClass)),
                names("season", Season.values(), season),
                names("fireGrade", FireGrade.values(), fireGrade),
                minPricePerMetre,
                maxPricePerMetre);
        return ClothPage.of(cloths.page(search, page, size), page, size);
    }

    private static <E extends Enum<E>> Set<String> names(String field, E[] known, List<String> written) {
        return named(field, known, written).stream().map(Enum::name).collect(Collectors.toSet());
    }

    private static <E extends Enum<E>> Set<E> named(String field, E[] known, List<String> written) {
        return written.stream().map(word -> named(field, known, word)).collect(Collectors.toSet());
    }

    private static <E extends Enum<E>> E named(String field, E[] known, String word) {
        return Arrays.stream(known)
                .filter(value -> value.name().equals(word.strip().toUpperCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> Refused.of(
                        field,
                        Words.quoted(word) + " is not known here",
                        "use one of " + Arrays.stream(known).map(Enum::name).collect(Collectors.joining(", "))));
    }
}
