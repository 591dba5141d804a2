package campcloth.layout;

import java.util.Optional;

/**
 * Where one copy of a piece lies.
 *
 * @param piece name of the piece
 * @param copy which copy of that name, counted from 1 (on through all pieces of the same name)
 * @param xCm left edge of the bounding box of the piece as it lies, from the left edge of the cloth
 * @param yCm lower edge of that box, from the cut edge
 * @param turned turned by 180 degrees
 * @param mirrored mirrored across its lengthwise axis
 * @param atHand which length at hand it lies on, counted from 1; empty for the bolt
 */
public record Placement(
        String piece, int copy, double xCm, double yCm, boolean turned, boolean mirrored, Optional<Integer> atHand) {

    public Placement(String piece, int copy, double xCm, double yCm, boolean turned, boolean mirrored) {
        this(piece, copy, xCm, yCm, turned, mirrored, Optional.empty());
    }
}
