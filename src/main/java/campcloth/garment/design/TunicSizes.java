package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Design;
import campcloth.garment.Measurement;
import campcloth.garment.Measurements;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The finished sizes of a tunic. A body circumference that is not given follows from the chest: a loose garment has about
 * 28 cm of ease (common practice, no source: "very loose" begins at 25), and cloth of thickness t lies t outside the body
 * all round, which adds 2 pi t.
 *
 * @param chestCm the finished circumference
 * @param headCm circumference of the head
 * @param notes what was taken for granted
 */
record TunicSizes(
        double chestCm,
        double lengthCm,
        double sleeveLengthCm,
        double sleeveTopWidthCm,
        double cuffWidthCm,
        double neckDiameterCm,
        double headCm,
        List<String> notes) {

    static final double EASE_CM = 28;
    static final double LEAST_EASE_CM = 10;
    private static final double USUAL_FINISHED_CM = 126;

    static final Measurement FINISHED_CHEST = Measurement.needed(
            Design.FINISHED_ROUND,
            40,
            250,
            "circumference of the finished garment: half-width of a loose garment that fits, doubled, 1 to 2 cm more");
    static final Measurement CHEST = Measurement.needed(
            "chestCm",
            40,
            200,
            "round the fullest part of the chest; only needed where the finished circumference is not given");
    static final Measurement LENGTH =
            Measurement.usual("lengthCm", 30, 180, 95, "from the shoulder seam to the hem; to the knee");
    static final Measurement SLEEVE = Measurement.usual(
            "sleeveLengthCm", 5, 90, 53, "from the shoulder seam to the cuff over a slightly bent arm");
    static final Measurement SLEEVE_TOP = Measurement.usual(
            "sleeveTopWidthCm", 16, 100, 40, "twice the armhole's depth with its ease, such as 2 x (15 + 5)");
    static final Measurement CUFF =
            Measurement.usual("cuffWidthCm", 14, 100, 30, "round the loose opening of the sleeve");
    static final Measurement NECK = Measurement.usual("neckDiameterCm", 8, 30, 15, "across the neck opening");
    static final Measurement HEAD = Measurement.usual("headCm", 40, 70, 58, "round the head above the ears");

    static final List<Measurement> ALL = List.of(FINISHED_CHEST, CHEST, LENGTH, SLEEVE, SLEEVE_TOP, CUFF, NECK, HEAD);

    /** The sizes for a wearer; refuses with the key of the measurement at fault. */
    static TunicSizes of(Measurements wearer, double thicknessMm) {
        List<String> notes = new ArrayList<>();
        TunicSizes sizes = new TunicSizes(
                chest(wearer, thicknessMm, notes),
                wearer.orUsual(LENGTH, notes),
                wearer.orUsual(SLEEVE, notes),
                wearer.orUsual(SLEEVE_TOP, notes),
                wearer.orUsual(CUFF, notes),
                wearer.orUsual(NECK, notes),
                wearer.given(HEAD).orElse(HEAD.usualCm().orElseThrow()),
                notes);
        notes.addAll(wearer.unusedNotes(ALL, "tunic"));
        sizes.check();
        return sizes;
    }

    /** The same, with a usual circumference where neither it nor the chest was given; enough for advice, not for cutting. */
    static TunicSizes usualFor(Measurements wearer, double thicknessMm) {
        if (wearer.given(FINISHED_CHEST).isPresent() || wearer.given(CHEST).isPresent()) {
            return of(wearer, thicknessMm);
        }
        TunicSizes sizes = of(wearer.with(FINISHED_CHEST.key(), USUAL_FINISHED_CM), thicknessMm);
        sizes.notes.add(FINISHED_CHEST.key() + " was not given: " + Words.number(USUAL_FINISHED_CM) + " cm taken.");
        return sizes;
    }

    private static double chest(Measurements wearer, double thicknessMm, List<String> notes) {
        Optional<Double> finished = wearer.given(FINISHED_CHEST);
        Optional<Double> body = wearer.given(CHEST);
        if (finished.isPresent() && body.isPresent()) {
            checkEase(finished.get(), body.get());
        }
        if (finished.isPresent()) {
            return finished.get();
        }
        double chest = body.orElseThrow(() -> Refused.of(
                FINISHED_CHEST.key(),
                "is missing, and so is chestCm to derive it from",
                "give the finished circumference or the wearer's chest in cm"));
        double finishedCm = chest + EASE_CM + 2 * Math.PI * thicknessMm / 10;
        notes.add("finishedChestCm was not given: " + Words.fixed(finishedCm, 1) + " cm taken, the chest of "
                + Words.number(chest) + " cm with " + Words.fixed(finishedCm - chest, 1)
                + " cm of ease for a loose fit.");
        return finishedCm;
    }

    private static void checkEase(double finished, double body) {
        if (finished - body < LEAST_EASE_CM) {
            throw Refused.of(
                    FINISHED_CHEST.key(),
                    "leaves " + Words.number(finished - body) + " cm of ease over a chest of " + Words.number(body)
                            + " cm, too little for a garment without openings",
                    "give at least " + Words.number(body + LEAST_EASE_CM) + " cm; " + Words.number(body + EASE_CM)
                            + " cm is a loose fit");
        }
    }

    private void check() {
        if (armholeCm() >= lengthCm) {
            throw Refused.of(
                    SLEEVE_TOP.key(),
                    "makes an armhole " + Words.number(armholeCm()) + " cm deep on a body " + Words.number(lengthCm)
                            + " cm long",
                    "give less than " + Words.number(2 * lengthCm) + " cm");
        }
        if (neckDiameterCm >= chestCm / 2) {
            throw Refused.of(
                    NECK.key(),
                    "is no less than the front's width of " + Words.number(chestCm / 2) + " cm",
                    "leave some shoulder beside the neck");
        }
    }

    /** Depth of the armhole from the shoulder. */
    double armholeCm() {
        return sleeveTopWidthCm / 2;
    }
}
