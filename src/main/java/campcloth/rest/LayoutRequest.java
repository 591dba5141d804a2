package campcloth.rest;

import campcloth.figure.Refused;
import campcloth.layout.Effort;
import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Point;
import campcloth.layout.Strip;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Free outlines to lay out on a width of cloth. */
record LayoutRequest(
        @Schema(example = "140", description = "usable width, selvedges left out") @NotNull
        Double widthCm,

        @Schema(description = "at most 200 copies in all") @NotEmpty @Size(max = Piece.MOST_COPIES)
        List<@NotNull @Valid PieceBody> pieces,

        @Schema(example = "1.0", description = "time to search, about, 0.01 to 30; 1 where it is left out") @Nullable
        Double seconds,

        @Schema(description = "free distance between any two pieces; 0 where it is left out") @Nullable
        Double gapCm,

        @Schema(
                description =
                        "start of the random choices; the same seed gives the same layout; 1 where it is left out")
        @Nullable
        Long seed) {

    private static final double USUAL_SECONDS = 1;
    private static final int COORDINATES = 2;

    /** An outline, as often as it is wanted. */
    @Schema(name = "PieceToLay")
    record PieceBody(
            @Schema(example = "front") @NotNull String name,

            @Schema(
                    description =
                            "corners as [x, y] in the order in which one walks round the piece, either way; x across"
                                    + " the cloth, y along it; at most 10000",
                    example = "[[0,0],[70,0],[70,95],[0,95]]")
            @NotNull
            List<@Nullable List<@Nullable Double>> outlineCm,

            @Schema(description = "1 where it is left out") @Nullable
            Integer count,

            @Schema(description = "may turn by 180 degrees, as on cloth without nap; false where it is left out")
            @Nullable
            Boolean turnable,

            @Schema(description = "may be mirrored across its lengthwise axis; false where it is left out") @Nullable
            Boolean mirrorable) {

        private Piece piece() {
            return new Piece(
                    name,
                    Outline.of(points()),
                    count == null ? 1 : count,
                    Boolean.TRUE.equals(turnable),
                    Boolean.TRUE.equals(mirrorable),
                    false);
        }

        private List<Point> points() {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < outlineCm.size(); i++) {
                points.add(point(outlineCm.get(i), "outlineCm[" + i + "]"));
            }
            return points;
        }

        private static Point point(@Nullable List<@Nullable Double> corner, String field) {
            Double x = corner == null || corner.size() != COORDINATES ? null : corner.get(0);
            Double y = x == null || corner == null ? null : corner.get(1);
            if (x == null || y == null) {
                throw Refused.of(field, "is not a corner", "give two numbers, [x, y], in cm");
            }
            return new Point(x, y);
        }
    }

    Strip strip() {
        return new Strip(widthCm, gapCm == null ? 0 : gapCm);
    }

    Effort effort() {
        return new Effort(seconds == null ? USUAL_SECONDS : seconds, seed == null ? 1 : seed);
    }

    List<Piece> toLay() {
        List<Piece> read = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            read.add(Refused.within("pieces[" + i + "]", pieces.get(i)::piece));
        }
        return read;
    }
}
