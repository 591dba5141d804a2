package campcloth.layout;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.List;
import java.util.Optional;

/**
 * A strip of cloth of given width and as long as is needed, with what else is at hand of the same cloth.
 *
 * @param widthCm width; selvedges are left out of it, or told beside it
 * @param gapCm free distance between any two pieces, measured along and across the cloth (a square of that half-side
 *     round each point stays clear, so the straight distance is never less); none is kept from the edges of the cloth
 * @param selvedgeCm width of each of the two selvedges within the width, on which nothing lies
 * @param edgeGapCm free distance from the cut ends and from the selvedges
 * @param repeat how the pattern repeats; empty for plain cloth
 * @param atHand lengths of the same cloth to be used first
 */
public record Strip(
        double widthCm,
        double gapCm,
        double selvedgeCm,
        double edgeGapCm,
        Optional<Repeat> repeat,
        List<AtHand> atHand) {

    private static final Range WIDTH = new Range("widthCm", 0.1, 100_000, "cm");
    private static final Range GAP = new Range("gapCm", 0, 100, "cm");
    /** Most repeats side by side that are told apart. */
    private static final double MOST_REPEATS = 2000;

    public Strip {
        atHand = List.copyOf(atHand);
        WIDTH.check(widthCm);
        GAP.check(gapCm);
        new Range("selvedgeCm", 0, 100, "cm").check(selvedgeCm);
        new Range("edgeGapCm", 0, 100, "cm").check(edgeGapCm);
        if (widthCm - 2 * (selvedgeCm + edgeGapCm) < WIDTH.least()) {
            throw Refused.of("widthCm", "is used up by selvedges and edge gaps", "give wider cloth or smaller edges");
        }
        double width = widthCm;
        repeat.flatMap(Repeat::widthCm)
                .filter(across -> across * MOST_REPEATS < width)
                .ifPresent(across -> {
                    throw Refused.of(
                            "repeatWidthCm", "repeats more than 2000 times across", "leave out so fine a repeat");
                });
        if (atHand.size() > AtHand.MOST) {
            throw Refused.of("lengthsAtHand", "names " + atHand.size() + " lengths", "give at most " + AtHand.MOST);
        }
        for (int i = 0; i < atHand.size(); i++) {
            if (atHand.get(i).widthCm().orElse(0.0) > widthCm) {
                throw Refused.of(
                        "lengthsAtHand[" + i + "].widthCm",
                        "is wider than the cloth",
                        "give its width up to " + widthCm + " cm, or leave it out");
            }
        }
    }

    public Strip(double widthCm, double gapCm) {
        this(widthCm, gapCm, 0, 0, Optional.empty(), List.of());
    }

    /** A strip on which pieces may touch. */
    public static Strip ofWidth(double widthCm) {
        return new Strip(widthCm, 0);
    }

    /** What stays free at each side, in cm. */
    double sideCm() {
        return selvedgeCm + edgeGapCm;
    }

    /** Width on which pieces may lie, in cm. */
    public double usableWidthCm() {
        return widthCm - 2 * sideCm();
    }

    /** Width on which pieces may lie of a length at hand, in cm; may be negative. */
    double usableWidthCm(AtHand length) {
        return length.widthCm().orElse(widthCm) - 2 * sideCm();
    }

    /** The same cloth with nothing to be matched on it, turned pieces no freer. */
    boolean isPlain() {
        return repeat.isEmpty() && atHand.isEmpty() && sideCm() == 0;
    }

    /** Where a repeat begins along the bolt or a length at hand (counted from 1), from its cut edge, in cm. */
    double repeatFromCutCm(Optional<Integer> length) {
        double usual = repeat.map(Repeat::fromCutCm).orElse(0.0);
        return length.flatMap(number -> atHand.get(number - 1).repeatFromCutCm())
                .orElse(usual);
    }

    Strip with(List<AtHand> others) {
        return new Strip(widthCm, gapCm, selvedgeCm, edgeGapCm, repeat, others);
    }
}
