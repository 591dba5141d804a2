package campcloth.plan;

import campcloth.layout.Outline;
import campcloth.layout.Piece;
import campcloth.layout.Placement;
import campcloth.layout.Point;
import java.util.List;

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
 */
public record PlacedPiece(
        String piece, int copy, double xCm, double yCm, boolean turned, boolean mirrored, List<Point> outlineCm) {

    public PlacedPiece {
        outlineCm = List.copyOf(outlineCm);
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
