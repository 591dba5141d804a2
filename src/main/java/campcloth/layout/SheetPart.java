package campcloth.layout;

/**
 * What is chalked once on the cloth as it lies: a piece, two pieces through both layers, or half of a piece along a fold.
 *
 * @param name what it becomes
 * @param outline the whole outline as it lies, in cm from the left edge of the sheet and from the cut edge; along a fold
 *     one half of it lies beyond the sheet's edge
 * @param turned its top points to the cut edge
 * @param mirrored it lies as the mirror image of its pattern
 * @param cut through how many layers
 */
public record SheetPart(String name, Outline outline, boolean turned, boolean mirrored, Cut cut) {

    /** How a part is cut. */
    public enum Cut {
        ONE_LAYER,
        BOTH_LAYERS,
        ON_LEFT_FOLD,
        ON_RIGHT_FOLD;

        public boolean isOnFold() {
            return this == ON_LEFT_FOLD || this == ON_RIGHT_FOLD;
        }
    }
}
