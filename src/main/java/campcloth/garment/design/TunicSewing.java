package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Garment;
import campcloth.garment.Hem;
import campcloth.garment.HemEdge;
import campcloth.garment.HemRules;
import campcloth.garment.LengthRule;
import campcloth.garment.Seam;
import campcloth.garment.SewnCloth;
import campcloth.garment.Stitch;
import java.util.ArrayList;
import java.util.List;

/** Seams, hems and what to know of a tunic, for one wearer and one cloth. Lengths along the finished seam lines. */
final class TunicSewing {

    private static final double FACING_CM = 4;
    /** Project choice: what a neck opening must have over the head to pass it. */
    private static final double HEAD_EASE_CM = 2;

    private TunicSewing() {}

    static Garment garment(TunicSizes sizes, TunicChoice choice, SewnCloth cloth) {
        List<Hem> hems = hems(sizes, choice, cloth);
        TunicCut cut = new TunicCut(sizes, choice, cloth, hems.get(0), hems.get(1));
        LengthRule rule = new LengthRule(
                cut.panels(), cut.widestPanelCm(), sizes.lengthCm(), sizes.sleeveLengthCm(), sizes.chestCm());
        return new Garment(
                "tunic",
                cut.pieces(),
                seams(sizes, choice, cloth),
                hems,
                cut.seamAllowanceCm(),
                rule,
                notes(sizes, choice, hems.get(0)),
                cautions(sizes, choice));
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
        edges.add(new HemEdge(HemEdge.Kind.NECK, neckOpeningCm(sizes, choice), 0, sizes.neckDiameterCm(), 0));
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
        seams.add(new Seam("facing to neck", neckOpeningCm(sizes, choice), Stitch.LOCK_301, 0));
        double facingEdge = Math.PI * (sizes.neckDiameterCm() + 2 * FACING_CM) + 2 * choice.slitCm() + 2 * FACING_CM;
        seams.add(new Seam("outer edge of the facing", facingEdge, Stitch.LOCK_301, cloth.holdsItsCutEdge() ? 0 : 1));
        return seams;
    }

    /** Length of the neck's edge: circle and both sides of the slit. */
    private static double neckOpeningCm(TunicSizes sizes, TunicChoice choice) {
        return Math.PI * sizes.neckDiameterCm() + 2 * choice.slitCm();
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

    private static List<String> cautions(TunicSizes sizes, TunicChoice choice) {
        double shortCm = sizes.headCm() + HEAD_EASE_CM - neckOpeningCm(sizes, choice);
        if (shortCm <= 0) {
            return List.of();
        }
        return List.of("The neck opening of " + Words.fixed(neckOpeningCm(sizes, choice), 0)
                + " cm will hardly pass a head of " + Words.number(sizes.headCm()) + " cm: make the front slit "
                + Words.fixed(choice.slitCm() + Math.ceil(shortCm / 2), 0) + " cm long.");
    }
}
