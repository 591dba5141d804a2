package campcloth.layout;

/**
 * Where one copy of a piece lies.
 *
 * @param piece name of the piece
 * @param copy which copy of that name, counted from 1 (on through all pieces of the same name)
 * @param xCm left edge of the bounding box of the piece as it lies, from the left selvedge
 * @param yCm lower edge of that box, from the cut edge
 * @param turned turned by 180 degrees
 * @param mirrored mirrored across its lengthwise axis
 */
public record Placement(String piece, int copy, double xCm, double yCm, boolean turned, boolean mirrored) {}
