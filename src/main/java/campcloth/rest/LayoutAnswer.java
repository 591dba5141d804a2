package campcloth.rest;

import campcloth.layout.Layout;
import campcloth.layout.Placement;
import com.fasterxml.jackson.annotation.JsonInclude;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A layout, its numbers as they were computed and not rounded, so that they can be checked. */
record LayoutAnswer(
        @Schema(description = "cloth in cm that the layout takes; beside lengths at hand, what it takes from the bolt")
        double lengthCm,

        @Schema(description = "no layout of these pieces is shorter")
        double lowerBoundCm,

        @Schema(description = "area of the pieces in percent of width times length")
        double usedPercent,

        List<SpotBody> placements,

        @Schema(
                description = "cloth in cm that the same pieces would take with no pattern to match; only where one is"
                        + " matched")
        @JsonInclude(JsonInclude.Include.NON_NULL)
        @Nullable
        Double lengthUnmatchedCm,

        @Schema(description = "the place of the repeat on which each group lies; only where a pattern is matched")
        @JsonInclude(JsonInclude.Include.NON_EMPTY)
        @Nullable
        List<MatchPhaseBody> matchPhases) {

    /** Where a copy lies: the lower-left corner of its bounding box as it lies. */
    @Schema(name = "LaidPiece")
    record SpotBody(
            String piece,

            @Schema(description = "counted from 1, on through all pieces of the same name")
            int copy,

            @Schema(description = "across the cloth") double xCm,
            @Schema(description = "along the cloth") double yCm,

            @Schema(description = "turned by 180 degrees") boolean turned,

            @Schema(description = "mirrored across its lengthwise axis")
            boolean mirrored,

            @Schema(description = "which of lengthsAtHand it lies on, counted from 1; left out for the bolt")
            @JsonInclude(JsonInclude.Include.NON_NULL)
            @Nullable
            Integer lengthAtHand) {

        static SpotBody of(Placement placed) {
            return new SpotBody(
                    placed.piece(),
                    placed.copy(),
                    placed.xCm(),
                    placed.yCm(),
                    placed.turned(),
                    placed.mirrored(),
                    placed.atHand().orElse(null));
        }
    }

    static LayoutAnswer of(Layout layout) {
        return new LayoutAnswer(
                layout.lengthCm(),
                layout.lowerBoundCm(),
                layout.usedPercent(),
                layout.placements().stream().map(SpotBody::of).toList(),
                layout.lengthUnmatchedCm().orElse(null),
                layout.matchPhases().stream().map(MatchPhaseBody::of).toList());
    }
}
