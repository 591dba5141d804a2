package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Design;
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
import campcloth.garment.SewnCloth;
import campcloth.garment.Stitch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Seams, hems and what to know of a tunic, for one wearer and one cloth. Lengths along the finished seam lines. */
final class TunicSewing {

    private static final double FACING_CM = 4;
    /** Project choice: what a neck opening must have over the head to pass it. */
    private static final double HEAD_EASE_CM = 2;

    private TunicSewing() {}

    static Garment garment(TunicSizes sizes, TunicChoice choice, SewnCloth cloth) {
        List<Hem> hems = hems(sizes, choice, cloth);
        TunicCut cut = new TunicCut(sizes, choice, cloth, hems.get(0), hems.get(1));
        Opening neck = neck(sizes, choice);
        return new Garment(
                "tunic",
                cut.pieces(),
                cut.smallPieces(),
                new Sewing(seams(sizes, choice, cloth), hems, cut.seamAllowanceCm(), steps(choice), List.of()),
                new Fitting(Optional.of(neck), List.of(sides(sizes, cut.seamAllowanceCm()))),
                new LengthRule(cut.panels(), cut.widestPanelCm(), sizes.lengthCm(), sizes.sleeveLengthCm()),
                savings(sizes),
                notes(sizes, choice, hems.get(0)),
                cautions(neck));
    }

    private static Opening neck(TunicSizes sizes, TunicChoice choice) {
        return new Opening("neck", sizes.neckDiameterCm(), choice.slitCm(), sizes.headCm(), HEAD_EASE_CM);
    }

    private static SeamRoom sides(TunicSizes sizes, double allowanceCm) {
        return SeamRoom.round("side seams", "the body", 2, allowanceCm, TunicSizes.EASE_CM, TunicSizes.LEAST_EASE_CM);
    }

    private static List<Saving> savings(TunicSizes sizes) {
        return List.of(
                new Saving(TunicSizes.LENGTH.key(), Saving.BODY, Saving.Kind.SHORTER, sizes.lengthCm()),
                new Saving(TunicSizes.SLEEVE.key(), "sleeves", Saving.Kind.SHORTER, sizes.sleeveLengthCm()),
                new Saving(TunicSizes.SLEEVE_TOP.key(), "sleeves", Saving.Kind.NARROWER, sizes.sleeveTopWidthCm()),
                new Saving(Design.FINISHED_ROUND, Saving.BODY, Saving.Kind.NARROWER, sizes.chestCm()));
    }

    /** Common practice, no source. */
    private static List<String> steps(TunicChoice choice) {
        List<String> steps = new ArrayList<>();
        if (choice.centreSeams()) {
            steps.add("Sew the centre seams of front and back and press them open.");
        }
        steps.add("Sew the shoulder seams, press them open, cut the neck and stay-stitch its edge.");
        steps.add("Sew the facing right side to right side round neck and slit, clip the curve, turn it in and press.");
        steps.add("Sew the sleeves on flat, their middle at the shoulder seam, and press towards the body.");
        steps.add("Try it on: pin the sides, mark what to let out or take in.");
        steps.add("Close side and sleeve in one seam from hem to cuff"
                + (choice.splitCm() > 0 ? ", leaving the splits open." : "."));
        steps.add("Let it hang a day, level the hem, then hem cuffs and hem"
                + (choice.splitCm() > 0 ? ", the splits first." : "."));
        return steps;
    }

    private static double sweepCm(TunicSizes sizes, TunicChoice choice) {
        return sizes.chestCm() + 4 * choice.flareCm();
    }

    /** Body and cuff first, then neck and splits. */
    private static List<Hem> hems(TunicSizes sizes, TunicChoice choice, SewnCloth cloth) {
        double sweep = sweepCm(sizes, choice);
        double flareTangent = choice.flareCm() / (sizes.lengthCm() - sizes.armholeCm());
        List<HemEdge> edges = new ArrayList<>();
        edges.add(new HemEdge(HemEdge.Kind.BODY, sweep, sizes.lengthCm(), sweep / 2, flareTangent, choice.hemCm()));
        edges.add(new HemEdge(
                HemEdge.Kind.CUFF,
                2 * sizes.cuffWidthCm(),
                sizes.sleeveLengthCm(),
                sizes.cuffWidthCm(),
                0,
                choice.cuffCm()));
        edges.add(new HemEdge(HemEdge.Kind.NECK, neck(sizes, choice).edgeCm(), 0, sizes.neckDiameterCm(), 0));
        if (choice.splitCm() > 0) {
            double leftCm = Math.min(choice.seamCm(), HemEdge.Kind.SIDE_SPLIT.usualAllowanceCm());
            edges.add(new HemEdge(HemEdge.Kind.SIDE_SPLIT, 4 * choice.splitCm(), 0, sweep / 2, 0, leftCm));
        }
        return edges.stream().map(edge -> HemRules.hem(edge, cloth)).toList();
    }

    private static List<Seam> seams(TunicSizes sizes, TunicChoice choice, SewnCloth cloth) {
        List<Seam> seams = new ArrayList<>();
        seams.add(Seam.pressedOpen("shoulders", sizes.chestCm() / 2 - sizes.neckDiameterCm(), cloth));
        seams.add(Seam.pressedOpen("sleeves to body", 2 * sizes.sleeveTopWidthCm(), cloth));
        seams.add(Seam.pressedOpen(
                "sides and sleeves",
                2 * (sizes.lengthCm() - sizes.armholeCm() - choice.splitCm() + sizes.sleeveLengthCm()),
                cloth));
        if (choice.centreSeams()) {
            seams.add(Seam.pressedOpen("centre front and back", 2 * sizes.lengthCm() - sizes.neckDiameterCm(), cloth));
        }
        seams.add(new Seam("facing to neck", neck(sizes, choice).edgeCm(), Stitch.LOCK_301, 0));
        double facingEdge = Math.PI * (sizes.neckDiameterCm() + 2 * FACING_CM) + 2 * choice.slitCm() + 2 * FACING_CM;
        seams.add(new Seam("outer edge of the facing", facingEdge, Stitch.LOCK_301, cloth.holdsItsCutEdge() ? 0 : 1));
        return seams;
    }

    private static List<String> notes(TunicSizes sizes, TunicChoice choice, Hem bodyHem) {
        List<String> notes = new ArrayList<>(sizes.notes());
        notes.add("Cut the neck after the shoulder seams: a circle " + Words.number(sizes.neckDiameterCm() - 2)
                + " cm across, 1 cm inside the finished neck, and a front slit of " + Words.number(choice.slitCm())
                + " cm; stay-stitch the edge. The facing, " + Words.number(FACING_CM)
                + " cm wide, comes from a scrap of about 30 x 40 cm.");
        notes.add("The hem is " + Words.number(sweepCm(sizes, choice)) + " cm round: " + stride(sizes, choice));
        if (bodyHem.spareCm() > 0) {
            notes.add("The hem's folds leave " + Words.number(bodyHem.spareCm())
                    + " cm over: trim it or keep it as extra length.");
        }
        return notes;
    }

    private static String stride(TunicSizes sizes, TunicChoice choice) {
        return new Stride(sizes.chestCm(), sizes.armholeCm(), sizes.lengthCm(), choice.flareCm(), choice.splitCm())
                .words();
    }

    private static List<String> cautions(Opening neck) {
        if (neck.passes()) {
            return List.of();
        }
        return List.of("The neck opening of " + Words.fixed(neck.edgeCm(), 0) + " cm will hardly pass a head of "
                + Words.number(neck.bodyCm()) + " cm: make the front slit " + Words.fixed(neck.slitWantedCm(), 0)
                + " cm long.");
    }
}
