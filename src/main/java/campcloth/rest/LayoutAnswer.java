package campcloth.rest;

import campcloth.layout.Layout;
import campcloth.layout.Placement;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;

/** A layout, its numbers as they were computed and not rounded, so that they can be checked. */
record LayoutAnswer(
        @Schema(description = "cloth that the layout takes") double lengthCm,

        @Schema(description = "no layout of these pieces is shorter")
        double lowerBoundCm,

        @Schema(description = "area of the pieces in percent of width times length")
        double usedPercent,

        List<SpotBody> placements) {

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
            boolean mirrored) {

        static SpotBody of(Placement placed) {
            return new SpotBody(
                    placed.piece(), placed.copy(), placed.xCm(), placed.yCm(), placed.turned(), placed.mirrored());
        }
    }

    static LayoutAnswer of(Layout layout) {
        return new LayoutAnswer(
                layout.lengthCm(),
                layout.lowerBoundCm(),
                layout.usedPercent(),
                layout.placements().stream().map(SpotBody::of).toList());
    }
}
