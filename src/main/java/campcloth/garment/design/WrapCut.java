package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.Fitting;
import campcloth.garment.Garment;
import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.HemEdge;
import campcloth.garment.HemRules;
import campcloth.garment.LengthRule;
import campcloth.garment.Options;
import campcloth.garment.Saving;
import campcloth.garment.Seam;
import campcloth.garment.Sewing;
import campcloth.garment.SewingStage;
import campcloth.garment.SewingStep;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.List;

/** Pieces, seams and edges of a pair of leg wraps (common practice, no source): each band in pieces of equal length. */
record WrapCut(WrapSizes sizes, Choice choice, SewnCloth cloth) {

    private static final int BANDS = 2;
    private static final int MOST_PIECES = 40;

    /**
     * The options, read.
     *
     * @param longestCm longest piece that is cut, allowances included
     * @param across cut from selvedge to selvedge
     */
    record Choice(double widthCm, double overlapCm, double tailCm, double longestCm, boolean across, double seamCm) {

        private static final double LEAST_CLIMB_CM = 2;

        static Choice of(Options options) {
            options.checkKnown(LegWraps.OPTIONS);
            Choice choice = new Choice(
                    options.cm(LegWraps.WIDTH),
                    options.cm(LegWraps.OVERLAP),
                    options.cm(LegWraps.TAIL),
                    options.cm(LegWraps.LONGEST),
                    options.yes(LegWraps.ACROSS),
                    options.cm(LegWraps.SEAM));
            if (choice.widthCm - choice.overlapCm < LEAST_CLIMB_CM) {
                throw Refused.of(
                        LegWraps.OVERLAP.key(),
                        "leaves each turn of a band " + Words.number(choice.widthCm) + " cm wide less than "
                                + Words.number(LEAST_CLIMB_CM) + " cm to climb",
                        "overlap by half the width");
            }
            return choice;
        }
    }

    Garment garment() {
        double lengthCm = sizes.bandCm(choice.widthCm, choice.overlapCm, choice.tailCm);
        List<Hem> hems = hems(lengthCm);
        double hemCm = hems.stream().mapToDouble(Hem::allowanceCm).sum();
        int pieces = pieces(lengthCm, hemCm);
        Outline piece = piece(lengthCm / pieces, hemCm);
        return new Garment(
                "leg-wraps",
                List.of(new GarmentPiece("band", piece, BANDS * pieces, false, true)),
                List.of(),
                new Sewing(seams(pieces), hems, seamCm(), steps(pieces), List.of("4 pins or ties to hold the ends")),
                Fitting.NONE,
                new LengthRule(BANDS * pieces, piece.widthCm(), choice.across ? choice.widthCm : lengthCm / pieces, 0),
                List.of(new Saving(WrapSizes.HEIGHT.key(), "wraps", Saving.Kind.SHORTER, sizes.heightCm())),
                notes(lengthCm, pieces),
                List.of());
    }

    /** Felted cloth is left raw at the edges. */
    private List<Hem> hems(double lengthCm) {
        if (cloth.holdsItsCutEdge()) {
            return List.of();
        }
        double aroundCm = BANDS * 2 * (lengthCm + choice.widthCm);
        return List.of(
                HemRules.hem(new HemEdge(HemEdge.Kind.SIDE, aroundCm, 0, choice.widthCm, 0, choice.seamCm), cloth));
    }

    private double seamCm() {
        return cloth.seamAllowanceCm(choice.seamCm);
    }

    /** How many pieces a band takes; each has an allowance at both ends, for a seam or a hem. */
    private int pieces(double lengthCm, double hemCm) {
        double longestCm = choice.across ? Math.min(choice.longestCm, cloth.usableWidthCm()) : choice.longestCm;
        double endsCm = 2 * Math.max(seamCm(), hemCm);
        double cutCm = choice.across ? cloth.acrossCm(lengthCm) : cloth.alongCm(lengthCm);
        if (longestCm <= endsCm || Math.ceil(cutCm / (longestCm - endsCm)) > MOST_PIECES) {
            throw Refused.of(
                    "options." + LegWraps.LONGEST.key(),
                    "makes more than " + MOST_PIECES + " pieces of a band of " + Words.fixed(lengthCm, 0) + " cm",
                    "allow longer pieces, or cut them along the cloth");
        }
        return (int) Math.ceil(cutCm / (longestCm - endsCm));
    }

    private Outline piece(double lengthCm, double hemCm) {
        double ends = 2 * Math.max(seamCm(), hemCm);
        return choice.across
                ? Outline.rectangle(cloth.acrossCm(lengthCm) + ends, cloth.alongCm(choice.widthCm) + 2 * hemCm)
                : Outline.rectangle(cloth.acrossCm(choice.widthCm) + 2 * hemCm, cloth.alongCm(lengthCm) + ends);
    }

    private List<Seam> seams(int pieces) {
        return pieces == 1
                ? List.of()
                : List.of(Seam.pressedOpen("across the bands", BANDS * (pieces - 1) * choice.widthCm, cloth));
    }

    private List<SewingStep> steps(int pieces) {
        List<SewingStep> steps = new ArrayList<>();
        if (pieces > 1) {
            steps.add(SewingStep.seams(
                    SewingStage.PIECING,
                    "Sew the pieces of each band end to end, neaten the seams and press them open.",
                    "across the bands"));
        }
        steps.add(SewingStep.of(
                SewingStage.FITTING,
                "Wind a band round the leg from the ankle up and mark where it ends below the knee."));
        steps.add(
                cloth.holdsItsCutEdge()
                        ? SewingStep.of(SewingStage.HEMS, "Trim the edges straight; felted cloth needs no hem.")
                        : SewingStep.hems(SewingStage.HEMS, "Hem both long edges and both ends.", HemEdge.Kind.SIDE));
        steps.add(SewingStep.of(
                SewingStage.LAST, "Roll them up from the upper end, so that they are wound on from the roll."));
        return steps;
    }

    private List<String> notes(double lengthCm, int pieces) {
        List<String> notes = new ArrayList<>(sizes.notes());
        notes.add("Each band is " + Words.fixed(lengthCm, 0) + " cm long: "
                + Words.fixed(sizes.turns(choice.widthCm, choice.overlapCm), 1) + " turns and "
                + Words.number(choice.tailCm) + " cm to tuck in"
                + (pieces > 1 ? ", in " + pieces + " pieces." : "."));
        notes.add("Wind them firmly, not tightly: numb or cold feet say that they are too tight.");
        return notes;
    }
}
