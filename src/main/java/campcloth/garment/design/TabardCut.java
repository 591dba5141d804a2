package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Fitting;
import campcloth.garment.Garment;
import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.HemEdge;
import campcloth.garment.HemRules;
import campcloth.garment.LengthRule;
import campcloth.garment.Saving;
import campcloth.garment.Seam;
import campcloth.garment.Sewing;
import campcloth.garment.SewingStage;
import campcloth.garment.SewingStep;
import campcloth.garment.SewnCloth;
import campcloth.garment.Stitch;
import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pieces, seams and hems of a tabard (common practice, no source): its open sides are folded twice like other open edges, ties are
 * strips folded in four, 2 cm wide, a belt is a tube 5 cm wide and long enough to knot, in two halves so that it does not set
 * the length of the cloth.
 */
record TabardCut(TabardSizes sizes, TabardChoice choice, SewnCloth cloth) {

    private static final double TIE_WIDTH_CM = 2;
    private static final double TIE_LENGTH_CM = 40;
    private static final int TIES = 4;
    /** Turned in at each end of a tie. */
    private static final double SHORT_END_CM = 1;

    private static final double BELT_WIDTH_CM = 5;
    private static final double BELT_ENDS_CM = 60;

    Garment garment() {
        Hem bottom = HemRules.hem(bottomEdge(), cloth);
        Hem sides = HemRules.hem(sideEdge(), cloth);
        List<Hem> hems = List.of(bottom, sides, HemRules.hem(choice.neck().hemEdge(), cloth));
        Outline half = panel(bottom, sides);
        return new Garment(
                "tabard",
                pieces(half),
                smallPieces(),
                new Sewing(seams(), hems, seamCm(), steps(), List.of()),
                new Fitting(Optional.of(choice.neck().opening()), List.of()),
                new LengthRule(choice.onePiece() ? 1 : 2, half.widthCm(), ruleLengthCm(), 0),
                List.of(
                        new Saving(UpperBody.LENGTH, Saving.BODY, Saving.Kind.SHORTER, sizes.lengthCm()),
                        new Saving(Tabard.WIDTH, "front and back", Saving.Kind.NARROWER, sizes.widthCm())),
                notes(bottom),
                choice.neck().cautions());
    }

    private double seamCm() {
        return cloth.seamAllowanceCm(choice.seamCm());
    }

    private double beltCm() {
        return sizes.waistCm() + BELT_ENDS_CM;
    }

    private double hangsCm() {
        return sizes.lengthCm() + choice.riseCm();
    }

    private double ruleLengthCm() {
        return choice.onePiece() ? 2 * hangsCm() : sizes.lengthCm();
    }

    private double bottomCm() {
        return sizes.widthCm() + 2 * choice.flareCm();
    }

    private HemEdge bottomEdge() {
        double tangent = choice.flareCm() / hangsCm();
        return new HemEdge(HemEdge.Kind.BODY, 2 * bottomCm(), hangsCm(), bottomCm(), tangent, choice.hemCm());
    }

    private HemEdge sideEdge() {
        double edgeCm = 4 * Math.hypot(hangsCm(), choice.flareCm());
        double leftCm = Math.min(choice.seamCm(), HemEdge.Kind.SIDE.usualAllowanceCm());
        return new HemEdge(HemEdge.Kind.SIDE, edgeCm, 0, sizes.widthCm(), 0, leftCm);
    }

    private Outline panel(Hem bottom, Hem sides) {
        double width = cloth.acrossCm(sizes.widthCm()) + 2 * sides.allowanceCm();
        double flare = cloth.acrossCm(choice.flareCm());
        double below = hangsCm() + bottom.allowanceCm();
        double hem = bottom.washedAllowanceCm();
        return choice.onePiece()
                ? Panels.overShoulder(width, flare, flare, below, below, hem)
                : Panels.flared(width, flare, flare, seamCm() + below, below, hem);
    }

    private List<GarmentPiece> pieces(Outline panel) {
        List<GarmentPiece> pieces = new ArrayList<>();
        for (String name : choice.onePiece() ? List.of("body") : List.of("front", "back")) {
            pieces.add(new GarmentPiece(name, panel, 1, false, true).matchedAtHem());
        }
        if (choice.belt()) {
            double seams = 2 * seamCm();
            Outline half =
                    Outline.rectangle(cloth.acrossCm(2 * BELT_WIDTH_CM) + seams, cloth.alongCm(beltCm() / 2) + seams);
            pieces.add(new GarmentPiece("belt half", half, 2, false, true));
        }
        return pieces;
    }

    private List<GarmentPiece> smallPieces() {
        List<GarmentPiece> pieces = new ArrayList<>();
        pieces.add(choice.neck().facing(cloth));
        if (choice.ties()) {
            Outline tie = Outline.rectangle(
                    cloth.acrossCm(4 * TIE_WIDTH_CM), cloth.alongCm(TIE_LENGTH_CM) + 2 * SHORT_END_CM);
            pieces.add(new GarmentPiece("tie", tie, TIES, false, true));
        }
        return pieces;
    }

    private List<Seam> seams() {
        List<Seam> seams = new ArrayList<>();
        if (!choice.onePiece()) {
            seams.add(Seam.pressedOpen(Neck.SHOULDER_SEAM, sizes.widthCm() - sizes.neckDiameterCm(), cloth));
        }
        if (choice.ties()) {
            seams.add(new Seam("ties", TIES * (TIE_LENGTH_CM + TIE_WIDTH_CM), Stitch.LOCK_301, 0));
        }
        if (choice.belt()) {
            seams.add(new Seam("belt", beltCm() + 2 * BELT_WIDTH_CM, Stitch.LOCK_301, 0));
            seams.add(new Seam("halves of the belt", 2 * BELT_WIDTH_CM, Stitch.LOCK_301, 0));
        }
        seams.addAll(choice.neck().seams(cloth));
        return seams;
    }

    private List<SewingStep> steps() {
        List<SewingStep> steps = new ArrayList<>(choice.neck().steps(choice.onePiece() ? "cloth" : ""));
        boolean ties = choice.ties();
        if (ties) {
            steps.add(SewingStep.seams(
                    SewingStage.SMALL_PARTS,
                    "Fold the ties in four lengthwise, their ends turned in, and stitch along the open side.",
                    "ties"));
        }
        steps.add(SewingStep.of(
                SewingStage.FITTING, "Try it on and mark the waist" + (ties ? " and where the ties go." : ".")));
        steps.add(SewingStep.hems(
                SewingStage.HEMS,
                "Hem the sides from end to end" + (ties ? ", the ties caught in at the waist." : "."),
                HemEdge.Kind.SIDE));
        steps.add(SewingStep.hems(SewingStage.HEMS, "Let it hang a day, level the hem and sew it.", HemEdge.Kind.BODY));
        if (choice.belt()) {
            steps.add(SewingStep.seams(
                    SewingStage.LAST,
                    "Join the halves of the belt, sew it to a tube, turn it through a gap left in the middle, press and close the gap.",
                    "halves of the belt",
                    "belt"));
        }
        return steps;
    }

    private List<String> notes(Hem bottom) {
        List<String> notes = new ArrayList<>(sizes.notes());
        if (choice.belt()) {
            notes.add("The belt is " + Words.number(beltCm()) + " cm long, the waist of "
                    + Words.number(sizes.waistCm()) + " cm and " + Words.number(BELT_ENDS_CM) + " cm to knot.");
        }
        notes.add(choice.neck().note(choice.onePiece() ? "at the fold" : "after the shoulder seams"));
        notes.add("The sides are open: it leaves room enough to stride, and hangs away from the body; near a fire it"
                + " swings, so tie or belt it.");
        if (bottom.spareCm() > 0) {
            notes.add("The hem's folds leave " + Words.number(bottom.spareCm())
                    + " cm over: trim it or keep it as extra length.");
        }
        return notes;
    }
}
