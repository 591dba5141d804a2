package campcloth.garment.design;

import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import campcloth.garment.TapeLine;
import java.util.ArrayList;
import java.util.List;

/**
 * The legs that bands are wound round. A band w wide, each turn o over the one before, climbs w - o a turn: it needs
 * {@code height / (w - o)} turns, and one more at each end to hold. A turn is as long as the leg is round on the mean of ankle
 * and calf, along the slant of the climb. {@code 42 cm at w = 10, o = 5, ankle 24, calf 38: 10.4 turns of 31.4 cm and a tail of
 * 40 are 366.6 cm.} Geometry; what trousers beneath add has to be measured with them on.
 *
 * @param calfCm round the thickest part of the calf
 * @param ankleCm round the ankle
 * @param heightCm ankle to below the knee
 * @param notes what was taken for granted
 */
record WrapSizes(double calfCm, double ankleCm, double heightCm, List<String> notes) {

    private static final double TURNS_TO_HOLD = 2;

    static final Measurement CALF = Measurement.usual(
            TapeLine.CALF, "calfCm", 20, 70, 38, "round the thickest part of the calf, over what is worn beneath");
    static final Measurement ANKLE =
            Measurement.usual(TapeLine.ANKLE, "ankleCm", 14, 50, 24, "round the ankle, over what is worn beneath");
    static final Measurement HEIGHT =
            Measurement.usual(TapeLine.ANKLE_TO_KNEE, "wrapHeightCm", 10, 60, 42, "from the ankle to below the knee");

    static final List<Measurement> ALL = List.of(CALF, ANKLE, HEIGHT);

    static WrapSizes of(Measurements wearer) {
        List<String> notes = new ArrayList<>();
        WrapSizes sizes = new WrapSizes(
                wearer.orUsual(CALF, notes), wearer.orUsual(ANKLE, notes), wearer.orUsual(HEIGHT, notes), notes);
        notes.addAll(wearer.unusedNotes(ALL, "leg wraps"));
        return sizes;
    }

    double meanRoundCm() {
        return (calfCm + ankleCm) / 2;
    }

    double turns(double widthCm, double overlapCm) {
        return heightCm / (widthCm - overlapCm) + TURNS_TO_HOLD;
    }

    /** Finished length of one band. */
    double bandCm(double widthCm, double overlapCm, double tailCm) {
        return turns(widthCm, overlapCm) * Math.hypot(meanRoundCm(), widthCm - overlapCm) + tailCm;
    }
}
