package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Measurements;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The finished sizes of a garment of the upper body with sleeves. A circumference that is not given follows from the chest and
 * the design's ease (for a tunic about 28 cm; common practice, no source: "very loose" begins at 25), and cloth of thickness t
 * lies t outside the body all round, which adds 2 pi t.
 *
 * @param profile the design
 * @param chestCm the finished circumference
 * @param bodyChestCm the chest itself, where it was given
 * @param headCm circumference of the head
 * @param notes what was taken for granted
 */
record BodySizes(
        BodyProfile profile,
        double chestCm,
        Optional<Double> bodyChestCm,
        double lengthCm,
        double sleeveLengthCm,
        double sleeveTopWidthCm,
        double cuffWidthCm,
        double neckDiameterCm,
        double headCm,
        List<String> notes) {

    /** The sizes for a wearer; refuses with the key of the measurement at fault. */
    static BodySizes of(BodyProfile profile, Measurements wearer, double thicknessMm) {
        List<String> notes = new ArrayList<>();
        BodySizes sizes = new BodySizes(
                profile,
                chest(profile, wearer, thicknessMm, notes),
                wearer.given(UpperBody.CHEST),
                wearer.orUsual(profile.length(), notes),
                wearer.orUsual(profile.sleeve(), notes),
                wearer.orUsual(profile.sleeveTop(), notes),
                wearer.orUsual(profile.cuff(), notes),
                wearer.orUsual(UpperBody.NECK, notes),
                wearer.given(UpperBody.HEAD).orElse(UpperBody.HEAD.usualCm().orElseThrow()),
                notes);
        notes.addAll(wearer.unusedNotes(profile.measurements(), profile.design()));
        sizes.check();
        return sizes;
    }

    /** The same, with a usual circumference where neither it nor the chest was given; enough for advice, not for cutting. */
    static BodySizes usualFor(BodyProfile profile, Measurements wearer, double thicknessMm) {
        if (wearer.given(UpperBody.FINISHED_CHEST).isPresent()
                || wearer.given(UpperBody.CHEST).isPresent()) {
            return of(profile, wearer, thicknessMm);
        }
        String key = UpperBody.FINISHED_CHEST.key();
        BodySizes sizes = of(profile, wearer.with(key, profile.usualRoundCm()), thicknessMm);
        sizes.notes.add(UpperBody.FINISHED_CHEST.notMeasured() + Words.number(profile.usualRoundCm()) + " cm taken.");
        return sizes;
    }

    private static double chest(BodyProfile profile, Measurements wearer, double thicknessMm, List<String> notes) {
        Optional<Double> finished = wearer.given(UpperBody.FINISHED_CHEST);
        Optional<Double> body = wearer.given(UpperBody.CHEST);
        if (finished.isPresent() && body.isPresent()) {
            checkEase(profile, finished.get(), body.get());
        }
        if (finished.isPresent()) {
            return finished.get();
        }
        double chest = body.orElseThrow(() -> Refused.of(
                UpperBody.FINISHED_CHEST.key(),
                "is missing, and so is the chest to derive it from",
                "give the finished circumference or the wearer's chest in cm"));
        double finishedCm = chest + profile.easeCm() + 2 * Math.PI * thicknessMm / 10;
        notes.add(UpperBody.FINISHED_CHEST.notMeasured() + Words.fixed(finishedCm, 1) + " cm taken, the chest of "
                + Words.number(chest) + " cm with " + Words.fixed(finishedCm - chest, 1) + " cm of ease for "
                + profile.fit() + ".");
        return finishedCm;
    }

    private static void checkEase(BodyProfile profile, double finished, double body) {
        if (finished - body < profile.leastEaseCm()) {
            throw Refused.of(
                    UpperBody.FINISHED_CHEST.key(),
                    "leaves " + Words.number(finished - body) + " cm of ease over a chest of " + Words.number(body)
                            + " cm, too little for a garment without openings",
                    "give at least " + Words.number(body + profile.leastEaseCm()) + " cm; "
                            + Words.number(body + profile.easeCm()) + " cm is " + profile.fit());
        }
    }

    private void check() {
        if (armholeCm() >= lengthCm) {
            throw Refused.of(
                    UpperBody.SLEEVE_TOP,
                    "makes an armhole " + Words.number(armholeCm()) + " cm deep on a body " + Words.number(lengthCm)
                            + " cm long",
                    "give less than " + Words.number(2 * lengthCm) + " cm");
        }
        Neck.checkBeside(neckDiameterCm, chestCm / 2);
    }

    /** Ease over the chest, where the chest is known. */
    Optional<Double> easeCm() {
        return bodyChestCm.map(body -> chestCm - body);
    }

    /** Depth of the armhole from the shoulder. */
    double armholeCm() {
        return sleeveTopWidthCm / 2;
    }
}
