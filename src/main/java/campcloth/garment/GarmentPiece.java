package campcloth.garment;

import campcloth.layout.Outline;

/**
 * A piece to cut for one garment.
 *
 * @param name name on the pattern
 * @param outline outline with all allowances, the grain along y, the finished top upwards
 * @param count how many to cut for one garment
 * @param pair copies alternate between as drawn and mirrored
 * @param foldable symmetrical about its lengthwise axis, so that it can be cut as a half on a fold
 */
public record GarmentPiece(String name, Outline outline, int count, boolean pair, boolean foldable) {}
