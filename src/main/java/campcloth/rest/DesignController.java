package campcloth.rest;

import campcloth.garment.Design;
import campcloth.garment.Designs;
import campcloth.garment.Measurement;
import campcloth.garment.Option;
import campcloth.garment.Size;
import campcloth.garment.Sizes;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The garment designs. */
@RestController
@Tag(name = "Designs", description = "Garments that can be planned and the measurements they need")
class DesignController {

    /** A measurement that a design needs. */
    @Schema(name = "Measurement")
    record MeasurementBody(
            String key,
            double leastCm,
            double mostCm,
            @Nullable Double usualCm,
            String howTaken) {

        static MeasurementBody of(Measurement measurement) {
            return new MeasurementBody(
                    measurement.key(),
                    measurement.range().least(),
                    measurement.range().most(),
                    measurement.usualCm().isPresent() ? measurement.usualCm().getAsDouble() : null,
                    measurement.howTaken());
        }
    }

    /** A choice that a design leaves open. */
    @Schema(name = "DesignOption")
    record OptionBody(
            String key,
            String words,

            @Schema(
                    description = "true or false, centimetres, or a whole number of things",
                    types = {"boolean", "number"})
            Object usual,

            @Nullable Double leastCm,
            @Nullable Double mostCm,
            @Nullable Integer leastCount,
            @Nullable Integer mostCount) {

        static OptionBody of(Option option) {
            if (option.value() instanceof Option.Cm cm) {
                return new OptionBody(
                        option.key(),
                        option.words(),
                        cm.usualCm(),
                        cm.range().least(),
                        cm.range().most(),
                        null,
                        null);
            }
            if (option.value() instanceof Option.Count count) {
                return new OptionBody(
                        option.key(),
                        option.words(),
                        count.usual(),
                        null,
                        null,
                        (int) count.range().least(),
                        (int) count.range().most());
            }
            boolean usual = ((Option.YesNo) option.value()).usual();
            return new OptionBody(option.key(), option.words(), usual, null, null, null, null);
        }
    }

    /** A design. */
    @Schema(name = "Design")
    record DesignBody(String key, String name, List<MeasurementBody> measurements, List<OptionBody> options) {

        static DesignBody of(Design design) {
            return new DesignBody(
                    design.key(),
                    design.name(),
                    design.measurements().stream().map(MeasurementBody::of).toList(),
                    design.options().stream().map(OptionBody::of).toList());
        }
    }

    /** A size of people. */
    @Schema(name = "BodySize", description = "Body measurements of people of one size, for whoever was not measured")
    record SizeBody(
            @Schema(example = "W-M") String key,
            String name,

            @Schema(description = "measurements by key") Map<String, FigureBody> measurements) {

        static SizeBody of(Size size) {
            Map<String, FigureBody> measurements = new LinkedHashMap<>();
            size.cm().forEach((key, figure) -> measurements.put(key, FigureBody.of(figure, "cm")));
            return new SizeBody(size.key(), size.name(), measurements);
        }
    }

    /** All designs. */
    @Schema(name = "Designs")
    record DesignsBody(List<DesignBody> designs, List<SizeBody> sizes) {}

    private final Sizes sizes;

    DesignController(Sizes sizes) {
        this.sizes = sizes;
    }

    @GetMapping("/api/designs")
    @Operation(
            operationId = "listDesigns",
            summary =
                    "The garment designs, each with the measurements it needs and their plausible range; sizes of people")
    DesignsBody designs() {
        return new DesignsBody(
                Designs.all().stream().map(DesignBody::of).toList(),
                sizes.all().stream().map(SizeBody::of).toList());
    }
}
