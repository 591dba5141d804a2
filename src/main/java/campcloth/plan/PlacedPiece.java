package campcloth.plan;

import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Placement;
import campcloth.layout.Point;
import java.util.List;
import java.util.Optional;

/**
 * Where one piece lies on the cloth.
 *
 * @param piece name of the piece
 * @param copy which copy of that name, counted from 1
 * @param xCm left edge of its bounding box, from the left selvedge
 * @param yCm lower edge of that box, from the cut edge
 * @param turned turned by 180 degrees
 * @param mirrored mirrored across its lengthwise axis
 * @param outlineCm its outline as it lies
 * @param atHand which length at hand it lies on, counted from 1; empty for the bolt
 */
public record PlacedPiece(
        String piece,
        int copy,
        double xCm,
        double yCm,
        boolean turned,
        boolean mirrored,
        List<Point> outlineCm,
        Optional<Integer> atHand) {

    public PlacedPiece {
        outlineCm = List.copyOf(outlineCm);
    }

    /** On the bolt. */
    PlacedPiece(
            String piece, int copy, double xCm, double yCm, boolean turned, boolean mirrored, List<Point> outlineCm) {
        this(piece, copy, xCm, yCm, turned, mirrored, outlineCm, Optional.empty());
    }

    /** The same, on another length at hand or the bolt. */
    PlacedPiece on(Optional<Integer> length) {
        return new PlacedPiece(piece, copy, xCm, yCm, turned, mirrored, outlineCm, length);
    }

    /** Upper edge of its box, from the cut edge. */
    double endCm() {
        return outlineCm.stream().mapToDouble(Point::yCm).max().orElseThrow();
    }

    Placement placement() {
        return new Placement(piece, copy, xCm, yCm, turned, mirrored);
    }

    /** This one copy as a piece that lies as drawn before it is turned and mirrored. */
    Piece asPiece() {
        Outline drawn = Outline.of(outlineCm).lying(turned, mirrored, 0, 0);
        return new Piece(piece, drawn, 1, true, true, false);
    }
}
