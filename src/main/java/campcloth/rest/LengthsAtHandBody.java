package campcloth.rest;

import campcloth.plan.Money;
import campcloth.plan.PlacedPiece;
import campcloth.plan.SeveralLengths;
import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The pieces divided among the lengths at hand and cloth to buy. */
@Schema(name = "LengthsAtHand")
record LengthsAtHandBody(
        @Schema(description = "in the order given") List<OnLength> lengths,

        @Schema(description = "where the rest lies on cloth to buy; empty where nothing is left")
        List<CuttingPlanAnswer.PlacementBody> bolt,

        @Schema(description = "length that the rest takes, as it is cut")
        double boltNetLengthCm,

        @Schema(description = "what to buy for the rest; 0 where nothing is left")
        double buyLengthCm,

        @Nullable Double cost) {

    /** What is cut from one length. */
    @Schema(name = "OnLength")
    record OnLength(
            double lengthCm,
            double usableWidthCm,
            double usedLengthCm,
            List<CuttingPlanAnswer.PlacementBody> placements) {

        static OnLength of(SeveralLengths.OnLength on) {
            return new OnLength(
                    Rounded.to(on.lengthCm(), 2),
                    Rounded.to(on.usableWidthCm(), 2),
                    Rounded.to(on.usedCm(), 2),
                    LengthsAtHandBody.placements(on.pieces()));
        }
    }

    static LengthsAtHandBody of(SeveralLengths several) {
        return new LengthsAtHandBody(
                several.lengths().stream().map(OnLength::of).toList(),
                placements(several.boltPieces()),
                Rounded.to(several.boltNetCm(), 2),
                Rounded.to(several.buyLengthCm(), 1),
                several.cost().map(Money::amount).orElse(null));
    }

    static List<CuttingPlanAnswer.PlacementBody> placements(List<PlacedPiece> pieces) {
        return pieces.stream().map(CuttingPlanAnswer.PlacementBody::of).toList();
    }
}
