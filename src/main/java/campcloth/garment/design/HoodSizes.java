package campcloth.garment.design;

import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import campcloth.garment.TapeLine;
import java.util.ArrayList;
import java.util.List;

/**
 * The finished sizes of a hood. Ease (common practice, no source): {@value #HEAD_EASE_CM} cm round the head and over it,
 * {@value #NECK_EASE_CM} cm at the neck, {@value #SHOULDER_EASE_CM} cm round the shoulders, and 2 pi t for cloth of thickness
 * t round each. The cape widens evenly from the neck, so that it goes over the shoulders where they are widest,
 * {@value #SHOULDER_DROP_CM} cm down (project choice).
 *
 * @param headCm the wearer's head, without ease
 * @param overHeadCm over the head with its ease
 * @param neckCm round the neck with its ease
 * @param shoulderRoundCm round the shoulders with its ease
 * @param capeCm neck to hem of the cape
 * @param clothCm what the cloth's thickness adds round
 * @param notes what was taken for granted
 */
record HoodSizes(
        double headCm,
        double overHeadCm,
        double neckCm,
        double shoulderRoundCm,
        double capeCm,
        double clothCm,
        List<String> notes) {

    /** Project choice: what a neck must have over the head to pass it. */
    static final double PASS_EASE_CM = 2;

    private static final double HEAD_EASE_CM = 6;
    private static final double NECK_EASE_CM = 6;
    private static final double SHOULDER_EASE_CM = 4;
    static final double SHOULDER_DROP_CM = 16;

    static final Measurement HEAD =
            Measurement.usual(TapeLine.HEAD, "headCm", 40, 70, 58, "round the head above the ears");
    static final Measurement OVER_HEAD = Measurement.usual(
            TapeLine.OVER_HEAD,
            "overHeadCm",
            44,
            100,
            68,
            "from the neck's base at one side over the crown to the other side");
    static final Measurement NECK = Measurement.usual(TapeLine.NECK, "neckCm", 24, 60, 38, "round the neck");
    static final Measurement SHOULDER_ROUND = Measurement.usual(
            TapeLine.SHOULDERS,
            "shoulderRoundCm",
            60,
            190,
            112,
            "round both shoulders and upper arms, the arms hanging down");
    static final Measurement CAPE = Measurement.usual(
            TapeLine.CAPE, "capeLengthCm", 10, 40, 20, "from the neck's base over the shoulder to the cape's hem");

    static final List<Measurement> ALL = List.of(HEAD, OVER_HEAD, NECK, SHOULDER_ROUND, CAPE);

    static HoodSizes of(Measurements wearer, double thicknessMm) {
        List<String> notes = new ArrayList<>();
        double clothCm = 2 * Math.PI * thicknessMm / 10;
        HoodSizes sizes = new HoodSizes(
                wearer.orUsual(HEAD, notes),
                wearer.orUsual(OVER_HEAD, notes) + HEAD_EASE_CM + clothCm,
                wearer.orUsual(NECK, notes) + NECK_EASE_CM + clothCm,
                wearer.orUsual(SHOULDER_ROUND, notes) + SHOULDER_EASE_CM + clothCm,
                wearer.orUsual(CAPE, notes),
                clothCm,
                notes);
        notes.addAll(wearer.unusedNotes(ALL, "hood"));
        return sizes;
    }

    /** Face edge to back, of a half. */
    double depthCm() {
        return (headCm + HEAD_EASE_CM + clothCm) / 2;
    }

    /** Neck to crown. */
    double heightCm() {
        return overHeadCm / 2;
    }

    /** Finished neck: close with a slit, without one as wide as the head wants to pass. */
    double neckRoundCm(double slitCm) {
        return slitCm > 0 ? neckCm : Math.max(neckCm, headCm + PASS_EASE_CM);
    }

    /** Round the hem of the cape. */
    double capeRoundCm(double slitCm) {
        double neck = neckRoundCm(slitCm);
        return neck + Math.max(0, shoulderRoundCm - neck) * capeCm / SHOULDER_DROP_CM;
    }
}
