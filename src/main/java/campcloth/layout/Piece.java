package campcloth.layout;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.Optional;

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
 * @param match the spot of it that meets the pattern of the cloth; empty where none is matched
 */
public record Piece(
        String name,
        Outline outline,
        int count,
        boolean turnable,
        boolean mirrorable,
        boolean pair,
        Optional<Match> match) {

    /** Most copies of all pieces together that one layout takes. */
    public static final int MOST_COPIES = 200;

    private static final int LONGEST_NAME = 200;
    /** A match point so near to the outline counts as on it. */
    private static final double NEAR_CM = 0.1;

    public Piece {
        if (name.isBlank() || name.length() > LONGEST_NAME) {
            throw Refused.of(
                    "name",
                    "has " + name.length() + " characters",
                    "name the piece in 1 to " + LONGEST_NAME + " characters");
        }
        new Range("count", 1, MOST_COPIES, "copies").check(count);
        match.map(Match::at).filter(at -> !outline.reaches(at, NEAR_CM)).ifPresent(at -> {
            throw Refused.of(
                    "matchAtCm",
                    "lies outside the piece",
                    "give a spot on its outline or within, in the coordinates of the outline");
        });
    }

    public Piece(String name, Outline outline, int count, boolean turnable, boolean mirrorable, boolean pair) {
        this(name, outline, count, turnable, mirrorable, pair, Optional.empty());
    }

    /** Whether a copy, counted from 1, may lie mirrored or not as stated. */
    public boolean allowsMirrored(int copy, boolean mirrored) {
        return mirrorable || mirrored == (pair && copy % 2 == 0);
    }

    /** Whether a copy, counted from 1, may lie so on cloth of a pattern, with its match point on a place of the repeat. */
    boolean allows(int copy, boolean turned, boolean mirrored, Optional<Repeat> repeat, Optional<MatchPhase> phase) {
        boolean turnedOver = mirrorable && mirrored;
        return allowsMirrored(copy, mirrored)
                && allowsTurned(turned)
                && repeat.filter(some -> !some.looksTheSame(turned, turnedOver)
                                || phase.filter(any -> !some.meets(any, turned, turnedOver))
                                        .isPresent())
                        .isEmpty();
    }

    /** The match point from the lower left corner of the piece's box as it lies. */
    Optional<Point> matchWithin(boolean turned, boolean mirrored) {
        return match.map(some -> {
            double x = some.at().xCm() - outline.leftCm();
            double y = some.at().yCm() - outline.lowCm();
            return new Point(turned != mirrored ? outline.widthCm() - x : x, turned ? outline.heightCm() - y : y);
        });
    }

    public boolean allowsTurned(boolean turned) {
        return turnable || !turned;
    }
}
