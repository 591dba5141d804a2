package campcloth.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where every copy of every piece lies on a strip of cloth.
 *
 * @param strip the cloth
 * @param pieces the pieces that were asked for
 * @param lengthCm cloth that the layout takes, from the cut edge to the end of the last piece
 * @param lowerBoundCm length below which no layout of these pieces can fall ({@link LowerBound})
 * @param usedPercent area of the pieces in percent of width times length
 * @param placements one for each copy, in the order of the pieces and copies
 * @param matchPhases the place of the repeat that each match group lies on
 * @param lengthUnmatchedCm cloth that the pieces would take with no pattern to match; empty where none was matched
 */
public record Layout(
        Strip strip,
        List<Piece> pieces,
        double lengthCm,
        double lowerBoundCm,
        double usedPercent,
        List<Placement> placements,
        List<MatchPhase> matchPhases,
        Optional<Double> lengthUnmatchedCm) {

    public Layout {
        matchPhases = List.copyOf(matchPhases);
        pieces = List.copyOf(pieces);
        placements = List.copyOf(placements);
    }

    public Layout(
            Strip strip,
            List<Piece> pieces,
            double lengthCm,
            double lowerBoundCm,
            double usedPercent,
            List<Placement> placements) {
        this(strip, pieces, lengthCm, lowerBoundCm, usedPercent, placements, List.of(), Optional.empty());
    }

    public double widthCm() {
        return strip.widthCm();
    }

    /** The piece that a placement speaks of. */
    public Piece pieceOf(Placement placement) {
        int left = placement.copy();
        for (Piece piece : pieces) {
            if (piece.name().equals(placement.piece())) {
                if (left <= piece.count()) {
                    return piece;
                }
                left -= piece.count();
            }
        }
        throw new IllegalArgumentException("no such copy: " + placement);
    }

    /** The copy's number among the copies of its own piece, counted from 1. */
    int copyOfPiece(Placement placement) {
        int left = placement.copy();
        Piece own = pieceOf(placement);
        for (Piece piece : pieces) {
            if (piece == own) {
                return left;
            }
            left -= piece.name().equals(placement.piece()) ? piece.count() : 0;
        }
        return left;
    }

    /** The outline as it lies on the cloth. */
    public Outline outlineOf(Placement placement) {
        return pieceOf(placement)
                .outline()
                .lying(placement.turned(), placement.mirrored(), placement.xCm(), placement.yCm());
    }

    /** The same with the length that it would take with no pattern to match. */
    Layout beside(double unmatchedCm) {
        return new Layout(
                strip, pieces, lengthCm, lowerBoundCm, usedPercent, placements, matchPhases, Optional.of(unmatchedCm));
    }

    /** Numbers of the lengths at hand on which something lies, counted from 1. */
    public List<Integer> lengthsBegun() {
        return placements.stream()
                .flatMap(placed -> placed.atHand().stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** Copies of each name asked for by some pieces. */
    static Map<String, Integer> copies(List<Piece> pieces) {
        Map<String, Integer> copies = new HashMap<>();
        pieces.forEach(piece -> copies.merge(piece.name(), piece.count(), Integer::sum));
        return copies;
    }
}
