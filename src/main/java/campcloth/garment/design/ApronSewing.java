package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Fitting;
import campcloth.garment.Garment;
import campcloth.garment.HemEdge;
import campcloth.garment.LengthRule;
import campcloth.garment.Saving;
import campcloth.garment.Seam;
import campcloth.garment.Sewing;
import campcloth.garment.SewingStage;
import campcloth.garment.SewingStep;
import campcloth.garment.Stitch;
import java.util.ArrayList;
import java.util.List;

/** Seams, hems and what to know of an apron. Lengths along the finished seam lines. */
final class ApronSewing {

    private ApronSewing() {}

    static Garment garment(ApronCut cut) {
        ApronSizes sizes = cut.sizes();
        return new Garment(
                "apron",
                cut.pieces(),
                cut.smallPieces(),
                new Sewing(seams(cut), cut.hems(), cut.seamAllowanceCm(), steps(cut), List.of()),
                Fitting.NONE,
                new LengthRule(
                        cut.panels(),
                        cut.pieces().get(0).outline().widthCm(),
                        sizes.lengthCm(),
                        cut.hasBib() ? sizes.bibHeightCm() : 0),
                savings(cut),
                notes(cut),
                List.of("Tie it so that a pull opens it: an apron that catches fire or a hook must come off at once."));
    }

    private static List<Saving> savings(ApronCut cut) {
        List<Saving> savings = new ArrayList<>();
        savings.add(new Saving(
                Apron.LENGTH.key(), "apron", Saving.Kind.SHORTER, cut.sizes().lengthCm()));
        if (cut.hasBib()) {
            savings.add(new Saving(
                    Apron.BIB_HEIGHT.key(),
                    "bib",
                    Saving.Kind.SHORTER,
                    cut.sizes().bibHeightCm()));
        }
        return savings;
    }

    private static List<Seam> seams(ApronCut cut) {
        ApronSizes sizes = cut.sizes();
        List<Seam> seams = new ArrayList<>();
        if (cut.panels() > 1) {
            seams.add(Seam.pressedOpen("panels to panels", (cut.panels() - 1) * sizes.lengthCm(), cut.cloth()));
        }
        if (cut.gatheredCm() > 0) {
            seams.add(new Seam("two gathering rows", 2 * cut.skirtCm(), Stitch.LOCK_301, 0));
        }
        seams.add(new Seam("band to apron, both edges", 2 * cut.widthCm(), Stitch.LOCK_301, 0));
        seams.add(new Seam("ties, along and across", 2 * (cut.tieCm() + 2 * cut.bandCm()), Stitch.LOCK_301, 0));
        if (cut.hasBib()) {
            seams.add(new Seam("bib to band", cut.bibWidthCm(), Stitch.LOCK_301, 0));
            seams.add(new Seam("straps", 2 * sizes.strapCm(), Stitch.LOCK_301, 0));
        }
        return seams;
    }

    /** Common practice, no source. */
    private static List<SewingStep> steps(ApronCut cut) {
        boolean bib = cut.hasBib();
        List<SewingStep> steps = new ArrayList<>();
        if (cut.panels() > 1) {
            steps.add(SewingStep.seams(
                    SewingStage.PIECING, "Join the panels and press the seams open.", "panels to panels"));
        }
        SewingStep edges = SewingStep.of(
                SewingStage.EDGES,
                "Hem the sides, then the lower edge" + (bib ? "; the bib's sides and top likewise." : "."));
        steps.add(
                bib
                        ? edges.hemming(HemEdge.Kind.SIDE, HemEdge.Kind.BODY, HemEdge.Kind.TOP)
                        : edges.hemming(HemEdge.Kind.SIDE, HemEdge.Kind.BODY));
        if (cut.gatheredCm() > 0) {
            steps.add(SewingStep.seams(
                    SewingStage.FULLNESS,
                    "Sew two rows of long stitches along the top and draw it to " + Words.number(cut.widthCm())
                            + " cm.",
                    "two gathering rows"));
        }
        SewingStep ties = SewingStep.seams(
                SewingStage.SMALL_PARTS,
                "Fold ties" + (bib ? " and straps" : "") + " lengthwise, sew, turn and press.",
                "ties, along and across");
        steps.add(bib ? ties.sewing("straps") : ties);
        SewingStep band = SewingStep.seams(
                SewingStage.BANDS,
                "Sew the band on" + (bib ? ", the bib in its upper edge," : "")
                        + " with the ties in its ends, and close it inside.",
                "band to apron, both edges");
        steps.add(bib ? band.sewing("bib to band") : band);
        if (bib) {
            steps.add(SewingStep.of(
                    SewingStage.LAST,
                    "Sew the straps to the bib, try it on, cross them behind and fasten them to the band."));
        }
        return steps;
    }

    private static String onePanelFewer(ApronCut cut) {
        int panels = cut.panels() - 1;
        double widestCm = cut.widestCm(panels);
        return widestCm < Apron.LEAST_WIDTH_CM
                ? ""
                : " One at most " + Words.number(widestCm) + " cm wide is cut in " + panels
                        + (panels == 1 ? " panel" : " panels") + " (option " + Apron.WIDTH.key() + ").";
    }

    private static List<String> notes(ApronCut cut) {
        List<String> notes = new ArrayList<>(cut.sizes().notes());
        notes.add("Each tie is " + Words.fixed(cut.tieCm(), 0)
                + " cm long: round the back and to a bow in front; bands, ties and straps may come from other cloth.");
        if (cut.panels() > 1) {
            notes.add("The cloth is narrower than the apron: it is pieced from " + cut.panels() + " panels."
                    + onePanelFewer(cut));
        }
        return notes;
    }
}
