package campcloth.layout;

/**
 * A part of a cutting sheet in figures, as a table tells it.
 *
 * @param number from 1, in an order in which it can be cut
 * @param of how many parts there are
 * @param name what it becomes
 * @param fromLeftCm from the left edge of the sheet to the part, cm
 * @param fromCutCm from the cut end to the part, cm
 * @param widthCm of the whole piece, across, cm
 * @param heightCm of the whole piece, along the cloth, cm
 * @param turned its top points to the cut end
 * @param mirrored the pattern lies face down
 * @param cut through how many layers
 * @param sentence the same in words
 */
public record CutRow(
        int number,
        int of,
        String name,
        double fromLeftCm,
        double fromCutCm,
        double widthCm,
        double heightCm,
        boolean turned,
        boolean mirrored,
        SheetPart.Cut cut,
        String sentence) {}
