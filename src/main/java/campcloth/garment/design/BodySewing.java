package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Design;
import campcloth.garment.Fitting;
import campcloth.garment.Garment;
import campcloth.garment.Hem;
import campcloth.garment.LengthRule;
import campcloth.garment.Saving;
import campcloth.garment.Seam;
import campcloth.garment.SeamRoom;
import campcloth.garment.Sewing;
import campcloth.garment.SewnCloth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Seams and what to know of a garment of the upper body, for one wearer and one cloth. Lengths along the finished seam lines. */
final class BodySewing {

    /** Round the knuckles with the thumb tucked in; common practice, no source. */
    private static final double HAND_CM = 22;

    private BodySewing() {}

    static Garment garment(BodySizes sizes, BodyChoice choice, SewnCloth cloth) {
        BodyHems hems = BodyHems.of(sizes, choice, cloth);
        BodyCut cut = new BodyCut(sizes, choice, cloth, hems.body(), hems.cuff());
        return new Garment(
                sizes.profile().design(),
                cut.pieces(),
                cut.smallPieces(),
                new Sewing(
                        seams(sizes, choice, cloth),
                        hems.all(),
                        cut.seamAllowanceCm(),
                        BodySteps.of(choice),
                        notions(choice)),
                new Fitting(Optional.of(choice.neck().opening()), rooms(sizes, choice, cut.seamAllowanceCm())),
                new LengthRule(
                        cut.panels(),
                        cut.widestPanelCm(),
                        cut.panelLengthCm(),
                        sizes.sleeveLengthCm() + choice.gores().heightCm()),
                savings(sizes),
                notes(sizes, choice, hems.body()),
                cautions(sizes, choice));
    }

    private static List<String> cautions(BodySizes sizes, BodyChoice choice) {
        List<String> cautions = new ArrayList<>(choice.neck().cautions());
        if (choice.bandCm() == 0 && sizes.cuffWidthCm() < HAND_CM) {
            cautions.add("A sleeve's end of " + Words.number(sizes.cuffWidthCm())
                    + " cm will hardly pass the hand, about " + Words.number(HAND_CM)
                    + " cm round with the thumb tucked in: measure it, or leave the seam open above the hem.");
        }
        return cautions;
    }

    private static List<SeamRoom> rooms(BodySizes sizes, BodyChoice choice, double allowanceCm) {
        List<SeamRoom> rooms = new ArrayList<>();
        rooms.add(room("side seams", sizes, allowanceCm));
        if (choice.centreSeams()) {
            rooms.add(room("centre seams", sizes, allowanceCm));
        }
        return rooms;
    }

    private static SeamRoom room(String seams, BodySizes sizes, double allowanceCm) {
        return sizes.easeCm()
                .map(ease -> SeamRoom.round(
                        seams, "the body", 2, allowanceCm, ease, sizes.profile().leastEaseCm()))
                .orElseGet(() -> SeamRoom.round(seams, "the body", 2, allowanceCm));
    }

    private static List<Saving> savings(BodySizes sizes) {
        return List.of(
                new Saving(UpperBody.LENGTH, Saving.BODY, Saving.Kind.SHORTER, sizes.lengthCm()),
                new Saving(UpperBody.SLEEVE, "sleeves", Saving.Kind.SHORTER, sizes.sleeveLengthCm()),
                new Saving(UpperBody.SLEEVE_TOP, "sleeves", Saving.Kind.NARROWER, sizes.sleeveTopWidthCm()),
                new Saving(Design.FINISHED_ROUND, Saving.BODY, Saving.Kind.NARROWER, sizes.chestCm()));
    }

    /** Common practice, no source. */
    private static List<String> notions(BodyChoice choice) {
        return choice.bandCm() > 0 ? List.of("2 buttons about 12 mm across for the cuff bands") : List.of();
    }

    private static List<Seam> seams(BodySizes sizes, BodyChoice choice, SewnCloth cloth) {
        List<Seam> seams = new ArrayList<>();
        if (!choice.onePiece()) {
            seams.add(Seam.pressedOpen(Neck.SHOULDER_SEAM, sizes.chestCm() / 2 - sizes.neckDiameterCm(), cloth));
        }
        seams.add(Seam.pressedOpen("sleeves to body", 2 * sizes.sleeveTopWidthCm(), cloth));
        seams.add(Seam.pressedOpen(
                "sides and sleeves", 2 * (choice.sideSeamCm(sizes) + choice.sleeveSeamCm(sizes)), cloth));
        if (choice.centreSeams()) {
            double lengthCm = choice.hangsCm(sizes) - choice.gores().ofCentreSeamCm();
            seams.add(Seam.pressedOpen("centre front and back", 2 * lengthCm - sizes.neckDiameterCm(), cloth));
        }
        seams.addAll(choice.gores().seams(cloth));
        if (choice.gussetCm() > 0) {
            seams.add(Seam.pressedOpen("gussets", 8 * choice.gussetCm(), cloth));
        }
        if (choice.bandCm() > 0) {
            seams.add(Seam.pressedOpen("cuff bands", 2 * (2 * sizes.cuffWidthCm() + 2 * choice.bandCm()), cloth));
        }
        seams.addAll(choice.neck().seams(cloth));
        return seams;
    }

    private static List<String> notes(BodySizes sizes, BodyChoice choice, Hem bodyHem) {
        List<String> notes = new ArrayList<>(sizes.notes());
        if (choice.onePiece()) {
            notes.add("Front and back are one piece: the fold lies " + Words.number(choice.riseCm())
                    + " cm above the shoulder, which the slope of the shoulder takes up; a pattern that has a top stands"
                    + " on its head at the back.");
        }
        notes.add(choice.neck().note(choice.onePiece() ? "at the fold" : "after the shoulder seams"));
        notes.add("The hem is " + Words.number(choice.sweepCm(sizes)) + " cm round: " + stride(sizes, choice));
        notes.addAll(choice.gores().notes(choice.centreSeams()));
        if (bodyHem.spareCm() > 0) {
            notes.add("The hem's folds leave " + Words.number(bodyHem.spareCm())
                    + " cm over: trim it or keep it as extra length.");
        }
        return notes;
    }

    private static String stride(BodySizes sizes, BodyChoice choice) {
        return new Stride(
                        sizes.chestCm(),
                        sizes.armholeCm(),
                        sizes.lengthCm(),
                        choice.flareCm(),
                        choice.splitCm(),
                        choice.gores())
                .words();
    }
}
