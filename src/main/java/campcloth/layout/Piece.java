package campcloth.layout;

import campcloth.figure.Range;
import campcloth.figure.Refused;

/**
 * A piece to cut, and how it may lie.
 *
 * @param name name on the pattern
 * @param outline outline with its allowances, the grain along y
 * @param count how many to cut
 * @param turnable may be turned by 180 degrees (cloth without nap)
 * @param mirrorable any copy may be mirrored across its lengthwise axis (both faces of the cloth are equal)
 * @param pair copies alternate between as drawn and mirrored (left and right sleeve); on a mirrorable piece this asks
 *     nothing more, since either copy can be turned over after cutting
 */
public record Piece(String name, Outline outline, int count, boolean turnable, boolean mirrorable, boolean pair) {

    /** Most copies of all pieces together that one layout takes. */
    public static final int MOST_COPIES = 200;

    private static final int LONGEST_NAME = 200;

    public Piece {
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw Refused.of(
                    "name",
                    "has " + name.length() + " characters",
                    "name the piece in 1 to " + LONGEST_NAME + " characters");
        }
        new Range("count", 1, MOST_COPIES, "copies").check(count);
    }

    /** Whether a copy, counted from 1, may lie mirrored or not as stated. */
    public boolean allowsMirrored(int copy, boolean mirrored) {
        return mirrorable || mirrored == (pair && copy % 2 == 0);
    }

    public boolean allowsTurned(boolean turned) {
        return turnable || !turned;
    }
}
