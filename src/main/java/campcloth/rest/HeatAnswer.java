package campcloth.rest;

import campcloth.fire.HeatOnCloth;
import campcloth.fire.RadiantWarming;
import campcloth.fire.Softening;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the radiant heat of a steady fire does there. */
@Schema(
        name = "HeatOnCloth",
        description =
                "Radiant heat of a steady fire on the cloth and on bare skin: an estimate. No numbers in the near field,"
                        + " where flames reach, nor without a distance.")
record HeatAnswer(
        @Schema(description = "with the share of its heat that a wood fire usually radiates, 0.30") @Nullable
        WarmingBody usual,

        @Schema(description = "with the share used for grading, 0.40") @Nullable
        WarmingBody strong,

        @Schema(
                example = "polyester",
                description = "which part of the cloth softens first; null where nothing softens")
        @Nullable
        String softeningPart,

        @Schema(example = "230", description = "where that part softens, degrees Celsius") @Nullable
        Double softeningC,

        @Schema(description = "what limits the numbers, or why there are none")
        List<String> notes) {

    /** What one steady radiant flux does. */
    @Schema(name = "RadiantWarming")
    record WarmingBody(
            @Schema(example = "0.5968") double fluxKwM2,

            @Schema(example = "52", description = "temperature of the cloth after one minute, degrees Celsius")
            double after1MinC,

            @Schema(example = "53", description = "temperature of the cloth after five minutes, degrees Celsius")
            double after5MinC,

            @Schema(example = "53", description = "where the cloth settles, degrees Celsius")
            double steadyC,

            @Schema(description = "time until its first part softens, s; null where it never does at that flux")
            @Nullable
            Double softensAfterS,

            @Schema(description = "time until bare skin hurts, s; null outside 1 to 12 kW/m2") @Nullable
            Double skinHurtsAfterS,

            @Schema(description = "time until bare skin has a second-degree burn, s; null outside 1 to 12 kW/m2")
            @Nullable
            Double skinBurnsAfterS) {

        static WarmingBody of(RadiantWarming warming) {
            return new WarmingBody(
                    Rounded.to(warming.fluxKwM2(), 4),
                    Rounded.to(warming.after1MinC(), 1),
                    Rounded.to(warming.after5MinC(), 1),
                    Rounded.to(warming.steadyC(), 1),
                    seconds(warming.softensAfterS()),
                    seconds(warming.skinHurtsAfterS()),
                    seconds(warming.skinBurnsAfterS()));
        }

        private static @Nullable Double seconds(Optional<Double> seconds) {
            return seconds.map(s -> Rounded.to(s, 1)).orElse(null);
        }
    }

    static HeatAnswer of(HeatOnCloth heat) {
        return new HeatAnswer(
                heat.usual().map(WarmingBody::of).orElse(null),
                heat.strong().map(WarmingBody::of).orElse(null),
                heat.softening().map(Softening::part).orElse(null),
                heat.softening().map(s -> Rounded.to(s.clothC(), 1)).orElse(null),
                heat.notes());
    }
}
