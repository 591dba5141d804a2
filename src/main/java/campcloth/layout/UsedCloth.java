package campcloth.layout;

import java.util.List;
import java.util.Optional;

/** How much of the cloth pieces use: their area in percent of the bolt's length and all of each length at hand begun. */
final class UsedCloth {

    private UsedCloth() {}

    static double percent(Strip strip, List<Piece> pieces, double lengthCm, List<Placement> placements) {
        double begun = placements.stream()
                .map(Placement::atHand)
                .flatMap(Optional::stream)
                .distinct()
                .map(number -> strip.atHand().get(number - 1))
                .mapToDouble(length -> length.lengthCm() * length.widthCm().orElse(strip.widthCm()))
                .sum();
        return percent(pieces, begun + strip.widthCm() * lengthCm);
    }

    /** Where every length at hand is begun. */
    static double percent(Strip strip, List<Piece> pieces, double lengthCm) {
        double begun = strip.atHand().stream()
                .mapToDouble(length -> length.lengthCm() * length.widthCm().orElse(strip.widthCm()))
                .sum();
        return percent(pieces, begun + strip.widthCm() * lengthCm);
    }

    private static double percent(List<Piece> pieces, double clothCm2) {
        double area = pieces.stream()
                .mapToDouble(piece -> piece.count() * piece.outline().areaCm2())
                .sum();
        return Math.min(100, 100 * area / clothCm2);
    }
}
