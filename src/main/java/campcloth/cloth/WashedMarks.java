package campcloth.cloth;

import campcloth.figure.Range;
import campcloth.figure.Refused;
import java.util.List;
import java.util.Optional;

/**
 * A piece marked, measured, washed and measured again, in the manner of ISO 3759 and ISO 5077.
 *
 * @param warp pairs of marks along the cloth, at most 12
 * @param weft pairs of marks across it, at most 12
 * @param specimenLengthCm length of the piece, where told
 * @param specimenWidthCm width of the piece, where told
 * @param rulerStepMm smallest step of the ruler, 0.1 to 10 mm
 * @param washing how it was washed and dried
 */
public record WashedMarks(
        List<MarkPair> warp,
        List<MarkPair> weft,
        Optional<Double> specimenLengthCm,
        Optional<Double> specimenWidthCm,
        double rulerStepMm,
        Washing washing) {

    public static final int MOST_PAIRS = 12;

    /** Smallest step of a ruler of which nothing is told, mm. */
    public static final double USUAL_RULER_STEP_MM = 1;

    static final Range RULER_STEP = new Range("rulerStepMm", 0.1, 10, "mm");

    private static final Range LENGTH = new Range("specimenLengthCm", 5, 500, "cm");
    private static final Range WIDTH = new Range("specimenWidthCm", 5, 500, "cm");

    public WashedMarks {
        warp = List.copyOf(warp);
        weft = List.copyOf(weft);
        RULER_STEP.check(rulerStepMm);
        specimenLengthCm.ifPresent(LENGTH::check);
        specimenWidthCm.ifPresent(WIDTH::check);
        if (warp.isEmpty() && weft.isEmpty()) {
            throw Refused.of("warp", "has no marks, and neither has weft", "give a pair of marks along or across");
        }
        checkPairs("warp", warp, specimenLengthCm);
        checkPairs("weft", weft, specimenWidthCm);
    }

    private static void checkPairs(String field, List<MarkPair> pairs, Optional<Double> sideCm) {
        if (pairs.size() > MOST_PAIRS) {
            throw Refused.of(field, "has " + pairs.size() + " pairs", "give at most " + MOST_PAIRS + " pairs of marks");
        }
        for (int i = 0; i < pairs.size(); i++) {
            MarkPair pair = pairs.get(i);
            if (pair.washes() != pairs.get(0).washes()) {
                throw Refused.of(
                        field + "[" + i + "].afterCm",
                        "has " + pair.washes() + " washes, the first pair has "
                                + pairs.get(0).washes(),
                        "measure every pair after every wash");
            }
            if (sideCm.filter(side -> pair.beforeCm() > side).isPresent()) {
                throw Refused.of(
                        field + "[" + i + "].beforeCm",
                        "is longer than the piece it is marked on",
                        "give the sides of the piece, length along the warp, in cm");
            }
        }
    }
}
