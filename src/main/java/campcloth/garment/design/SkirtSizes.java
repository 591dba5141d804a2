package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import campcloth.garment.SewnCloth;
import campcloth.garment.TapeLine;
import java.util.ArrayList;
import java.util.List;

/**
 * The finished sizes of a skirt from waist to hem. Ease (common practice, no source): {@value #WAIST_EASE_CM} cm at the waist,
 * {@value #HIP_EASE_CM} cm at the hip, and 2 pi t for cloth of thickness t, which lies t outside the body.
 *
 * @param waistCm finished circumference at the waist
 * @param hipCm finished circumference at the hip, no less than at the waist
 * @param bodyHipCm the wearer's hip
 * @param hipDepthCm waist to hip
 * @param lengthCm waist to hem
 * @param notes what was taken for granted
 */
record SkirtSizes(
        double waistCm, double hipCm, double bodyHipCm, double hipDepthCm, double lengthCm, List<String> notes) {

    static final double HIP_EASE_CM = 8;
    static final double LEAST_EASE_CM = 2;
    private static final double WAIST_EASE_CM = 2;
    /** Project choice: cloth that must be left below the hip. */
    private static final double LEAST_BELOW_HIP_CM = 5;
    /** Project choice: the waist of a wearer of about 170 cm. */
    private static final double WAIST_BELOW_SHOULDER_CM = 40;

    static final Measurement WAIST =
            Measurement.usual(TapeLine.WAIST, "waistCm", 40, 180, 80, "round the waist, over what is worn below");
    static final Measurement HIP =
            Measurement.usual(TapeLine.HIP, "hipCm", 45, 200, 102, "round the fullest part of hip and seat");
    static final Measurement HIP_DEPTH =
            Measurement.usual(TapeLine.WAIST_TO_HIP, "hipDepthCm", 8, 35, 20, "from the waist down to there");
    static final Measurement LENGTH = Measurement.usual(
            TapeLine.WAIST_TO_HEM, "lengthCm", 25, 130, 92, "from the waist to the hem; to the ankle");

    static final List<Measurement> ALL = List.of(WAIST, HIP, HIP_DEPTH, LENGTH);

    /** The sizes for a wearer in a cloth; refuses with the path of the measurement at fault. */
    static SkirtSizes worn(Measurements wearer, SewnCloth cloth, String design) {
        return Refused.within("wearer", () -> of(wearer, cloth.thicknessMm(), design));
    }

    private static SkirtSizes of(Measurements wearer, double thicknessMm, String design) {
        List<String> notes = new ArrayList<>();
        double clothCm = 2 * Math.PI * thicknessMm / 10;
        double waistCm = wearer.orUsual(WAIST, notes) + WAIST_EASE_CM + clothCm;
        double hipCm = wearer.orUsual(HIP, notes);
        double depthCm = wearer.given(HIP_DEPTH).orElse(HIP_DEPTH.usualCm().orElseThrow());
        double lengthCm = wearer.orUsual(LENGTH, notes);
        notes.addAll(wearer.unusedNotes(ALL, design));
        if (lengthCm < depthCm + LEAST_BELOW_HIP_CM) {
            throw Refused.of(
                    LENGTH.key(),
                    "is " + Words.number(lengthCm) + " cm and ends above or just below the hip, "
                            + Words.number(depthCm) + " cm down",
                    "give at least " + Words.number(depthCm + LEAST_BELOW_HIP_CM) + " cm");
        }
        return new SkirtSizes(
                waistCm, Math.max(waistCm, hipCm + HIP_EASE_CM + clothCm), hipCm, depthCm, lengthCm, notes);
    }

    /** Width round the hem that a full stride wants. */
    double strideCm() {
        return Stride.wantedCm(WAIST_BELOW_SHOULDER_CM + lengthCm);
    }

    /** Share of the body's surface from the waist down. */
    double coveredPercent() {
        return Cover.fromTheWaistPercent(WAIST_BELOW_SHOULDER_CM, lengthCm);
    }
}
