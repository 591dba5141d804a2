package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Fitting;
import campcloth.garment.Garment;
import campcloth.garment.Hem;
import campcloth.garment.HemEdge;
import campcloth.garment.HemRules;
import campcloth.garment.LengthRule;
import campcloth.garment.Opening;
import campcloth.garment.Saving;
import campcloth.garment.Seam;
import campcloth.garment.SeamRoom;
import campcloth.garment.Sewing;
import campcloth.garment.SewingStage;
import campcloth.garment.SewingStep;
import campcloth.garment.SewnCloth;
import campcloth.garment.Stitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Seams, hems and what to know of trousers, for one wearer and one cloth. Lengths along the finished seam lines. */
final class TrouserSewing {

    /** Project choices. */
    private static final double HEEL_EASE_CM = 1;

    private static final double LEAST_EASE_CM = 8;
    private static final double CORD_TO_TIE_CM = 60;

    private static final String GUSSET_FIRST = "gusset to one leg";
    private static final String GUSSET_THEN = "gusset to the other leg";

    private TrouserSewing() {}

    static Garment garment(TrouserSizes sizes, TrouserChoice choice, SewnCloth cloth) {
        double finishedCm = sizes.aroundCm() + choice.easeCm();
        sizes.checkThigh(TrouserCut.legRoundCm(finishedCm, choice.gussetCm()), choice.howWider());
        Hem legHem = HemRules.hem(
                new HemEdge(
                        HemEdge.Kind.LEG_END,
                        2 * sizes.legEndCm(),
                        sizes.outsideCm(),
                        sizes.legEndCm(),
                        0,
                        choice.hemCm()),
                cloth);
        TrouserCut cut = new TrouserCut(sizes, choice, cloth, legHem, finishedCm);
        Opening legEnd = Opening.ofTube("leg end", sizes.legEndCm(), 0, sizes.heelCm(), HEEL_EASE_CM);
        return new Garment(
                "trousers",
                cut.pieces(),
                List.of(),
                new Sewing(
                        seams(sizes, choice, cloth, finishedCm),
                        List.of(legHem),
                        cut.seamCm(),
                        steps(choice),
                        notions(sizes)),
                new Fitting(Optional.of(legEnd), rooms(sizes, choice, cut.seamCm())),
                new LengthRule(
                        choice.sideSeams() ? 4 : 2,
                        cut.pieces().get(0).outline().widthCm(),
                        sizes.outsideCm(),
                        0),
                List.of(
                        new Saving(TrouserSizes.INSEAM.key(), "legs", Saving.Kind.SHORTER, sizes.inseamCm()),
                        new Saving(TrouserSizes.LEG_END.key(), "leg ends", Saving.Kind.NARROWER, sizes.legEndCm())),
                notes(sizes, choice, finishedCm),
                cautions(legEnd));
    }

    /** Centre seams let out both legs; with side seams those as well. */
    private static List<SeamRoom> rooms(TrouserSizes sizes, TrouserChoice choice, double allowanceCm) {
        double legCm = TrouserCut.legRoundCm(sizes.aroundCm() + choice.easeCm(), choice.gussetCm());
        double easeCm = Math.max(0, Math.min(choice.easeCm() - LEAST_EASE_CM, 2 * sizes.thighRoomCm(legCm)));
        List<SeamRoom> rooms = new ArrayList<>();
        rooms.add(SeamRoom.round("centre seams", "the seat", 2, allowanceCm, easeCm, 0));
        if (choice.sideSeams()) {
            rooms.add(SeamRoom.round("side seams", "the seat", 2, allowanceCm, easeCm, 0));
        }
        return rooms;
    }

    private static List<Seam> seams(TrouserSizes sizes, TrouserChoice choice, SewnCloth cloth, double finishedCm) {
        List<Seam> seams = new ArrayList<>();
        double gusset = choice.gussetCm();
        seams.add(Seam.pressedOpen("inseams", 2 * (sizes.inseamCm() - gusset), cloth));
        if (choice.sideSeams()) {
            seams.add(Seam.pressedOpen("sides", 2 * sizes.outsideCm(), cloth));
        }
        if (gusset > 0) {
            seams.add(Seam.pressedOpen(GUSSET_FIRST, 2 * gusset, cloth));
            seams.add(Seam.pressedOpen(GUSSET_THEN, 2 * gusset, cloth));
        }
        double out =
                gusset > 0 ? 0 : TrouserCut.extensionCm(finishedCm, false) + TrouserCut.extensionCm(finishedCm, true);
        seams.add(Seam.pressedOpen("centre front and back", 2 * sizes.crotchDepthCm() + out, cloth));
        seams.add(new Seam("casing", finishedCm, Stitch.LOCK_301, 0));
        return seams;
    }

    /** Common practice, no source. */
    private static List<SewingStep> steps(TrouserChoice choice) {
        List<SewingStep> steps = new ArrayList<>();
        if (choice.sideSeams()) {
            steps.add(SewingStep.seams(SewingStage.BODY, "Sew the side seams and press them open.", "sides"));
        }
        if (choice.gussetCm() > 0) {
            addGusset(steps);
        } else {
            steps.add(SewingStep.seams(
                    SewingStage.CLOSING, "Close the inseam of each leg and press it open.", "inseams"));
            steps.add(SewingStep.seams(
                    SewingStage.CLOSING,
                    "Turn one leg right side out, put it into the other, and sew the curved seam from waist to waist,"
                            + " twice in the curve; leave a gap for the cord in front where the casing will be.",
                    "centre front and back"));
        }
        steps.add(SewingStep.of(SewingStage.FITTING, "Try it on, sit down and squat in it: mark waist and leg ends."));
        steps.add(SewingStep.seams(
                SewingStage.BANDS,
                "Fold the top in 1 and 3 cm, stitch the casing down and draw the cord in.",
                "casing"));
        steps.add(SewingStep.hems(SewingStage.HEMS, "Hem the leg ends.", HemEdge.Kind.LEG_END));
        return steps;
    }

    private static void addGusset(List<SewingStep> steps) {
        steps.add(SewingStep.seams(
                SewingStage.INSETS,
                "Sew the gusset to both inner edges of one leg, corner at the crotch line, stopping the width of an"
                        + " allowance before each corner.",
                GUSSET_FIRST));
        steps.add(SewingStep.seams(
                SewingStage.CLOSING, "Close the inseam of each leg from the end up to the gusset.", "inseams"));
        steps.add(SewingStep.seams(
                SewingStage.CLOSING, "Sew the other two sides of the gusset to the other leg.", GUSSET_THEN));
        steps.add(SewingStep.seams(
                SewingStage.CLOSING,
                "Close the centre seam in front and behind, from gusset to waist; leave a gap for the cord in front"
                        + " where the casing will be.",
                "centre front and back"));
    }

    private static List<String> notions(TrouserSizes sizes) {
        return List.of("cord or tape for the waist, " + Words.fixed(sizes.waistCm() + CORD_TO_TIE_CM, 0) + " cm");
    }

    private static List<String> notes(TrouserSizes sizes, TrouserChoice choice, double finishedCm) {
        List<String> notes = new ArrayList<>(sizes.notes());
        notes.add("The seat is " + Words.number(finishedCm) + " cm round, the leg "
                + Words.number(TrouserCut.legRoundCm(finishedCm, choice.gussetCm()))
                + " cm below the crotch; the cord draws the waist in to " + Words.number(sizes.waistCm()) + " cm.");
        notes.add("The crotch depth holds " + Words.number(TrouserSizes.SITTING_CM) + " cm to sit down with.");
        return notes;
    }

    private static List<String> cautions(Opening legEnd) {
        if (legEnd.passes()) {
            return List.of();
        }
        return List.of("The leg end of " + Words.number(legEnd.edgeCm()) + " cm will hardly pass a heel of "
                + Words.number(legEnd.bodyCm()) + " cm: make it "
                + Words.number(Math.ceil(legEnd.bodyCm() + HEEL_EASE_CM))
                + " cm round, or leave a split.");
    }
}
