package campcloth.garment;

import campcloth.layout.Match;
import campcloth.layout.Outline;
import campcloth.layout.Point;

/**
 * A piece to cut for one garment.
 *
 * @param name name on the pattern
 * @param outline outline with all allowances, the grain along y, the finished top upwards
 * @param count how many to cut for one garment
 * @param pair copies alternate between as drawn and mirrored
 * @param foldable symmetrical about its lengthwise axis, so that it can be cut as a half on a fold
 * @param match where it meets the pattern of the cloth, with the pieces that it is matched with
 */
public record GarmentPiece(String name, Outline outline, int count, boolean pair, boolean foldable, Match match) {

    /** Pieces that meet the pattern together at the garment's hem. */
    public static final String HEM = "hem";

    /** Its copies match each other, at the lower edge in their middle. */
    public GarmentPiece(String name, Outline outline, int count, boolean pair, boolean foldable) {
        this(name, outline, count, pair, foldable, new Match(outline.lowestInTheMiddle(), name));
    }

    /** The same, matched where it is with all that meets the pattern at the hem. */
    public GarmentPiece matchedAtHem() {
        return matched(match.at(), HEM);
    }

    /** The same, matched at the hem where one of its seams ends. */
    public GarmentPiece matchedAtHem(double seamXCm) {
        return matched(new Point(seamXCm, outline.lowCm()), HEM);
    }

    /** The same, its copies matched with each other at the seam of the upper edge. */
    public GarmentPiece matchedAtTop(double seamAllowanceCm) {
        double middle = outline.leftCm() + outline.widthCm() / 2;
        return matched(new Point(middle, outline.lowCm() + outline.heightCm() - seamAllowanceCm), match.group());
    }

    private GarmentPiece matched(Point at, String group) {
        return new GarmentPiece(name, outline, count, pair, foldable, new Match(at, group));
    }
}
