package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Fitting;
import campcloth.garment.Garment;
import campcloth.garment.HemEdge;
import campcloth.garment.LengthRule;
import campcloth.garment.Saving;
import campcloth.garment.Seam;
import campcloth.garment.SeamRoom;
import campcloth.garment.Sewing;
import campcloth.garment.SewingStage;
import campcloth.garment.SewingStep;
import campcloth.garment.Stitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Seams, hems and what to know of a wrapped skirt. Lengths along the finished seam lines. */
final class WrappedSewing {

    /** Project choice: what must stay of the overlap when the skirt is let out. */
    private static final double LEAST_OVERLAP_CM = 10;

    private WrappedSewing() {}

    static Garment garment(WrappedCut cut) {
        SkirtSizes sizes = cut.sizes();
        SeamRoom overlap = new SeamRoom(
                "the overlap",
                "waist and hip",
                Math.max(0, cut.overlapCm() - LEAST_OVERLAP_CM),
                Math.max(0, sizes.hipCm() - sizes.bodyHipCm() - SkirtSizes.LEAST_EASE_CM));
        return new Garment(
                "wrapped-skirt",
                cut.pieces(),
                cut.smallPieces(),
                new Sewing(
                        seams(cut), List.of(cut.hem(), cut.fronts()), cut.seamAllowanceCm(), steps(cut), notions(cut)),
                new Fitting(Optional.empty(), List.of(overlap)),
                new LengthRule(cut.panels(), cut.pieces().get(0).outline().widthCm(), sizes.lengthCm(), 0),
                List.of(new Saving(SkirtSizes.LENGTH.key(), "skirt", Saving.Kind.SHORTER, sizes.lengthCm())),
                notes(cut),
                List.of(
                        "The overlap opens at every long step and lifts in wind: at a fire wear it with the opening turned"
                                + " away from it and something under it, and pin the outer end where it blows."));
    }

    private static List<Seam> seams(WrappedCut cut) {
        List<Seam> seams = new ArrayList<>();
        if (cut.panels() > 1) {
            seams.add(Seam.pressedOpen(
                    "panels to panels", (cut.panels() - 1) * cut.panel().sideCm(), cut.cloth()));
        }
        seams.add(new Seam("waistband to skirt", cut.bandLengthCm(), Stitch.LOCK_301, 0));
        seams.add(
                new Seam("waistband, inner edge and ends", cut.bandLengthCm() + 2 * cut.bandCm(), Stitch.LOCK_301, 0));
        return seams;
    }

    /** Common practice, no source. */
    private static List<SewingStep> steps(WrappedCut cut) {
        List<SewingStep> steps = new ArrayList<>();
        if (cut.panels() > 1) {
            steps.add(SewingStep.seams(
                    SewingStage.PIECING,
                    "Join the panels, a selvedge at both ends where there is one, and press the seams open.",
                    "panels to panels"));
        }
        steps.add(SewingStep.hems(SewingStage.EDGES, "Hem the two end edges.", HemEdge.Kind.FRONT));
        if (pleatsCm(cut) > 0) {
            steps.add(SewingStep.of(
                    SewingStage.FULLNESS,
                    "Lay the width above the band in pleats at sides and back, none where the ends overlap."));
        }
        if (cut.ties()) {
            steps.add(
                    SewingStep.of(
                            SewingStage.SMALL_PARTS,
                            "Sew and turn the ties; leave a gap in the band's seam at the side for the long tie to pass through."));
        }
        steps.add(SewingStep.seams(
                SewingStage.BANDS,
                "Sew the waistband on, " + (cut.ties() ? "the ties in its ends, " : "")
                        + "fold it over and close it inside.",
                "waistband to skirt",
                "waistband, inner edge and ends"));
        steps.add(SewingStep.hems(
                SewingStage.HEMS,
                "Wrap it round, let it hang a day where it is flared, level the hem and hem it.",
                HemEdge.Kind.BODY));
        return steps;
    }

    private static List<String> notions(WrappedCut cut) {
        return cut.ties() ? List.of() : List.of("2 buttons, one for the inner end");
    }

    private static double pleatsCm(WrappedCut cut) {
        return cut.topCm() - cut.bandLengthCm();
    }

    private static List<String> notes(WrappedCut cut) {
        SkirtSizes sizes = cut.sizes();
        List<String> notes = new ArrayList<>(sizes.notes());
        notes.add(cut.panels() + (cut.panels() == 1 ? " panel" : " panels") + " on this cloth, "
                + Words.fixed(cut.hemWidthCm(), 0) + " cm from end to end at the hem, "
                + Words.number(cut.overlapCm()) + " cm of it overlap; " + Words.fixed(pleatsCm(cut), 1)
                + " cm are laid in pleats at the waist.");
        notes.add(stride(cut, sizes.strideCm()));
        return notes;
    }

    private static String stride(WrappedCut cut, double wantedCm) {
        double closedCm = cut.hemWidthCm() - cut.overlapCm();
        String round = "Closed, the hem is " + Words.fixed(closedCm, 0) + " cm round: ";
        if (closedCm >= wantedCm) {
            return round + "room enough to stride.";
        }
        double opensCm = wantedCm - closedCm;
        String wanted = "a full stride at this length takes about " + Words.fixed(wantedCm, 0) + " cm; ";
        return opensCm <= cut.overlapCm()
                ? round + wanted + "the overlap opens by " + Words.fixed(opensCm, 0) + " cm at such a step."
                : round + wanted + "that is more than the overlap gives: take a flare of "
                        + Words.fixed(Math.ceil((wantedCm - cut.topCm()) / (2 * cut.panels())), 0)
                        + " cm (option " + WrappedSkirt.FLARE.key() + "), or a wider overlap.";
    }
}
