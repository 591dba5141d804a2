package campcloth.garment.design;

import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import campcloth.garment.TapeLine;
import java.util.ArrayList;
import java.util.List;

/**
 * The finished sizes of a cloak. The neck is {@value #NECK_EASE_CM} cm looser than the wearer's and wider by 2 pi t for cloth of
 * thickness t, which lies t outside the body (common practice, no source).
 *
 * @param necklineCm length of the finished neck edge, front to front
 * @param lengthCm neck to hem
 * @param shoulderRoundCm round the shoulders and upper arms
 * @param groundCm nape to ground
 * @param notes what was taken for granted
 */
record CloakSizes(double necklineCm, double lengthCm, double shoulderRoundCm, double groundCm, List<String> notes) {

    private static final double NECK_EASE_CM = 4;

    static final Measurement NECK =
            Measurement.usual(TapeLine.NECK, "neckCm", 28, 60, 40, "round the base of the neck");
    static final Measurement LENGTH = Measurement.usual(
            TapeLine.NAPE_TO_HEM, "lengthCm", 30, 180, 115, "from the nape down the back to the hem; to the calf");
    static final Measurement SHOULDER_ROUND = Measurement.usual(
            TapeLine.SHOULDERS,
            "shoulderRoundCm",
            60,
            190,
            112,
            "round both shoulders and upper arms, the arms hanging down");
    static final Measurement GROUND = Measurement.usual(
            TapeLine.NAPE_TO_GROUND,
            "napeToGroundCm",
            60,
            200,
            145,
            "from the nape to the ground, in the shoes worn with it");

    static final List<Measurement> ALL = List.of(NECK, LENGTH, SHOULDER_ROUND, GROUND);

    static CloakSizes of(Measurements wearer, double thicknessMm) {
        List<String> notes = new ArrayList<>();
        CloakSizes sizes = new CloakSizes(
                wearer.orUsual(NECK, notes) + NECK_EASE_CM + 2 * Math.PI * thicknessMm / 10,
                wearer.orUsual(LENGTH, notes),
                wearer.given(SHOULDER_ROUND).orElse(SHOULDER_ROUND.usualCm().orElseThrow()),
                wearer.given(GROUND).orElse(GROUND.usualCm().orElseThrow()),
                notes);
        notes.addAll(wearer.unusedNotes(ALL, "cloak"));
        return sizes;
    }

    double overGroundCm() {
        return groundCm - lengthCm;
    }
}
