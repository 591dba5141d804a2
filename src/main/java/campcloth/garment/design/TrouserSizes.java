package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import campcloth.garment.TapeLine;
import java.util.ArrayList;
import java.util.List;

/**
 * What trousers need to know of the wearer. The waist is drawn in by a cord, so that the wider of waist and hip sets the
 * width.
 *
 * @param aroundCm the wider of waist and hip
 * @param waistCm round the waist
 * @param inseamCm crotch to the finished leg end
 * @param crotchDepthCm waist to crotch, with {@value #SITTING_CM} cm more for sitting down (project choice)
 * @param thighCm round the thigh
 * @param legEndCm round the finished leg end
 * @param heelCm round heel and instep, what must pass the leg end
 * @param notes what was taken for granted
 */
record TrouserSizes(
        double aroundCm,
        double waistCm,
        double inseamCm,
        double crotchDepthCm,
        double thighCm,
        double legEndCm,
        double heelCm,
        List<String> notes) {

    static final double SITTING_CM = 2;
    /** Project choice: room round the thigh to bend the knee and to sit. */
    private static final double THIGH_EASE_CM = 6;

    static final Measurement HIP =
            Measurement.usual(TapeLine.HIP, "hipCm", 50, 200, 102, "round the widest part of the seat");
    static final Measurement WAIST =
            Measurement.usual(TapeLine.WAIST, "waistCm", 40, 200, 88, "round the waist, where the cord is to lie");
    static final Measurement INSEAM = Measurement.usual(
            TapeLine.INSIDE_LEG, "inseamCm", 25, 105, 76, "inside of the leg, from the crotch to where the leg ends");
    static final Measurement CROTCH_DEPTH = Measurement.usual(
            TapeLine.CROTCH_DEPTH,
            "crotchDepthCm",
            14,
            45,
            27,
            "sitting upright, from the waist down to the seat of the chair; or outside of the leg less its inside");
    static final Measurement THIGH =
            Measurement.usual(TapeLine.THIGH, "thighCm", 28, 110, 58, "round the thickest part of the thigh");
    static final Measurement LEG_END =
            Measurement.usual(TapeLine.LEG_END, "legEndCm", 20, 110, 46, "round the finished end of the leg, loose");
    static final Measurement HEEL =
            Measurement.usual(TapeLine.HEEL, "heelCm", 20, 50, 33, "round heel and instep, the foot stretched");

    static final List<Measurement> ALL = List.of(HIP, WAIST, INSEAM, CROTCH_DEPTH, THIGH, LEG_END, HEEL);

    static TrouserSizes of(Measurements wearer) {
        List<String> notes = new ArrayList<>();
        double waist = wearer.orUsual(WAIST, notes);
        TrouserSizes sizes = new TrouserSizes(
                Math.max(wearer.orUsual(HIP, notes), waist),
                waist,
                wearer.orUsual(INSEAM, notes),
                wearer.orUsual(CROTCH_DEPTH, notes) + SITTING_CM,
                wearer.orUsual(THIGH, notes),
                wearer.orUsual(LEG_END, notes),
                wearer.given(HEEL).orElse(HEEL.usualCm().orElseThrow()),
                notes);
        notes.addAll(wearer.unusedNotes(ALL, "trousers"));
        return sizes;
    }

    /** Waist to leg end, finished. */
    double outsideCm() {
        return crotchDepthCm + inseamCm;
    }

    /** What a leg so wide has over the thigh and the room it needs to move. */
    double thighRoomCm(double legRoundCm) {
        return legRoundCm - thighCm - THIGH_EASE_CM;
    }

    /** Refuses a leg that is too narrow for the thigh. */
    void checkThigh(double legRoundCm, String wider) {
        if (thighRoomCm(legRoundCm) < 0) {
            throw Refused.of(
                    THIGH.key(),
                    "with " + Words.number(THIGH_EASE_CM) + " cm to move in does not pass the leg of "
                            + Words.fixed(legRoundCm, 1) + " cm",
                    "take " + wider + ", or measure again");
        }
    }
}
