package campcloth.garment.design;

import campcloth.garment.Design;
import campcloth.garment.Measurement;
import campcloth.garment.TapeLine;

/** Measurements that the designs of the upper body share. Usual values are common practice, no source. */
final class UpperBody {

    static final Measurement FINISHED_CHEST = Measurement.needed(
            TapeLine.GARMENT_ROUND,
            Design.FINISHED_ROUND,
            40,
            250,
            "circumference of the finished garment: half-width of a loose garment that fits, doubled, 1 to 2 cm more");
    static final Measurement CHEST = Measurement.needed(
            TapeLine.CHEST,
            "chestCm",
            40,
            200,
            "round the fullest part of the chest; only needed where the finished circumference is not given");
    static final Measurement NECK =
            Measurement.usual(TapeLine.NECK_OPENING, "neckDiameterCm", 8, 30, 15, "across the neck opening");
    static final Measurement HEAD =
            Measurement.usual(TapeLine.HEAD, "headCm", 40, 70, 58, "round the head above the ears");

    static final String LENGTH = "lengthCm";
    static final String SLEEVE = "sleeveLengthCm";
    static final String SLEEVE_TOP = "sleeveTopWidthCm";
    static final String CUFF = "cuffWidthCm";

    private UpperBody() {}

    /** Shoulder to hem. */
    static Measurement length(double usualCm, String reachesTo) {
        return Measurement.usual(
                TapeLine.SHOULDER_TO_HEM, LENGTH, 30, 180, usualCm, "from the shoulder seam to the hem; " + reachesTo);
    }

    static Measurement sleeve(double usualCm) {
        return Measurement.usual(
                TapeLine.SLEEVE, SLEEVE, 5, 90, usualCm, "from the shoulder seam to the cuff over a slightly bent arm");
    }

    static Measurement sleeveTop(double usualCm) {
        return Measurement.usual(
                TapeLine.SLEEVE_TOP,
                SLEEVE_TOP,
                16,
                100,
                usualCm,
                "twice the armhole's depth with its ease, such as 2 x (15 + 5)");
    }

    static Measurement cuff(TapeLine tape, double leastCm, double usualCm, String howTaken) {
        return Measurement.usual(tape, CUFF, leastCm, 100, usualCm, howTaken);
    }
}
