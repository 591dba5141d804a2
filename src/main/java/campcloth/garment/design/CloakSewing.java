package campcloth.garment.design;

import campcloth.figure.Words;
import campcloth.garment.Fitting;
import campcloth.garment.Garment;
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
import java.util.ArrayList;
import java.util.List;

/** Seams, hems and what to know of a cloak, for one wearer and one cloth. Lengths along the finished seam lines. */
final class CloakSewing {

    /** Common practice, no source: a full circle has too much fullness for a deeper hem than 1 + 1 cm. */
    private static final double FULL_CIRCLE_HEM_CM = 2;

    private static final int FULL_CIRCLE = 4;
    /** Project choice: where the shoulders are widest, below the neck along the cloth. */
    private static final double SHOULDER_CM = 16;

    private static final double LEAST_OVER_GROUND_CM = 10;
    private static final double TIE_CM = 50;

    private CloakSewing() {}

    static Garment garment(CloakSizes sizes, CloakChoice choice, SewnCloth cloth) {
        CircleSector sector = choice.sector(sizes);
        List<Hem> hems = hems(sector, choice, cloth);
        CloakCut cut = new CloakCut(sector, choice, cloth, hems.get(0), hems.get(1));
        return new Garment(
                "cloak",
                cut.pieces(),
                cut.smallPieces(),
                new Sewing(seams(cut, sizes, cloth), hems, cut.seamAllowanceCm(), steps(cut), notions(sizes)),
                Fitting.NONE,
                new LengthRule(cut.panelCount(), cut.widestPanelCm(), sector.heightCm(), 0),
                List.of(new Saving(CloakSizes.LENGTH.key(), "cloak", Saving.Kind.SHORTER, sizes.lengthCm())),
                notes(sizes, cut),
                cautions(sizes));
    }

    /** Hem and neck first. A circle is cut larger all over for what washing takes, so its hem takes none of that. */
    private static List<Hem> hems(CircleSector sector, CloakChoice choice, SewnCloth cloth) {
        double hemCm = sector.outerArcCm() * choice.wedges();
        double mostCm = choice.quarters() == FULL_CIRCLE ? FULL_CIRCLE_HEM_CM : choice.hemCm();
        List<HemEdge> edges = new ArrayList<>();
        edges.add(
                choice.hemFacing()
                        ? new HemEdge(HemEdge.Kind.FACED_HEM, hemCm, 0, sector.outerArcCm(), sector.angle() / 2)
                        : new HemEdge(HemEdge.Kind.BODY, hemCm, 0, sector.outerArcCm(), sector.angle() / 2, mostCm));
        double neckCm = sector.innerArcCm() * choice.wedges();
        edges.add(new HemEdge(HemEdge.Kind.NECK, neckCm, 0, neckCm, 0));
        if (!choice.frontFacing()) {
            double leftCm = Math.min(choice.seamCm(), HemEdge.Kind.FRONT.usualAllowanceCm());
            edges.add(new HemEdge(HemEdge.Kind.FRONT, 2 * sector.lengthCm(), 0, sector.outerArcCm(), 0, leftCm));
        }
        return edges.stream().map(edge -> HemRules.hem(edge, cloth)).toList();
    }

    private static List<Seam> seams(CloakCut cut, CloakSizes sizes, SewnCloth cloth) {
        CloakChoice choice = cut.choice();
        List<Seam> seams = new ArrayList<>();
        if (cut.piecingCm() > 0) {
            seams.add(Seam.pressedOpen("panels to panels", cut.piecingCm(), cloth));
        }
        if (choice.wedges() > 1) {
            seams.add(Seam.pressedOpen(
                    "from neck to hem", (choice.wedges() - 1) * cut.sector().lengthCm(), cloth));
        }
        seams.add(new Seam("facing to neck", sizes.necklineCm(), Stitch.LOCK_301, 0));
        int neatened = cloth.holdsItsCutEdge() ? 0 : 1;
        seams.add(new Seam("outer edge of the neck facing", cut.neckFacingEdgeCm(), Stitch.LOCK_301, neatened));
        if (choice.hemFacing()) {
            double hemCm = cut.sector().outerArcCm() * choice.wedges();
            seams.add(new Seam("facing to hem", hemCm, Stitch.LOCK_301, neatened));
        }
        if (choice.frontFacing()) {
            seams.add(new Seam("facings to front edges", 2 * sizes.lengthCm(), Stitch.LOCK_301, neatened));
        }
        return seams;
    }

    /** Common practice, no source. */
    private static List<SewingStep> steps(CloakCut cut) {
        CloakChoice choice = cut.choice();
        List<SewingStep> steps = new ArrayList<>();
        steps.add(SewingStep.of(
                SewingStage.STAY,
                "Stay-stitch the neck and every edge that runs off the grain, as soon as it is cut."));
        if (cut.piecingCm() > 0) {
            steps.add(SewingStep.seams(
                    SewingStage.PIECING,
                    "Join the panels along the grain and press the seams open.",
                    "panels to panels"));
        }
        if (choice.wedges() > 1) {
            steps.add(SewingStep.seams(
                    SewingStage.BODY,
                    "Join the parts from neck to hem with little tension, and press.",
                    "from neck to hem"));
        }
        steps.add(
                choice.frontFacing()
                        ? SewingStep.seams(
                                SewingStage.EDGES,
                                "Sew the facings to the front edges, turn them in and press.",
                                "facings to front edges")
                        : SewingStep.hems(SewingStage.EDGES, "Hem the front edges.", HemEdge.Kind.FRONT));
        steps.add(SewingStep.seams(
                        SewingStage.NECK,
                        "Face the neck: right side to right side, clip the curve, turn it in and press; sew on clasp or"
                                + " ties.",
                        "facing to neck",
                        "outer edge of the neck facing")
                .hemming(HemEdge.Kind.NECK));
        steps.add(SewingStep.of(
                SewingStage.FITTING,
                "Hang it up by the neck for a day, put it on, and level the hem from the ground up: cloth cut on the"
                        + " bias drops."));
        steps.add(
                choice.hemFacing()
                        ? SewingStep.seams(
                                        SewingStage.HEMS,
                                        "Sew the facing to the hem, turn it in and catch its upper edge down.",
                                        "facing to hem")
                                .hemming(HemEdge.Kind.FACED_HEM)
                        : SewingStep.hems(
                                SewingStage.HEMS,
                                "Hem it, easing the fullness in evenly all round.",
                                HemEdge.Kind.BODY));
        return steps;
    }

    private static List<String> notions(CloakSizes sizes) {
        return List.of(
                "1 cloak clasp, or 2 ties of " + Words.number(TIE_CM) + " cm",
                "stay tape for the neck, " + Words.fixed(sizes.necklineCm() + 2, 0) + " cm");
    }

    private static List<String> notes(CloakSizes sizes, CloakCut cut) {
        CloakChoice choice = cut.choice();
        CircleSector sector = cut.sector();
        List<String> notes = new ArrayList<>(sizes.notes());
        notes.add("A " + choice.words() + " with a neck of radius " + Words.fixed(sector.innerCm(), 1)
                + " cm and a hem of radius " + Words.fixed(sector.outerCm(), 1) + " cm, "
                + Words.fixed(choice.angle() * sector.outerCm(), 0) + " cm round the hem; about "
                + Words.fixed(
                        sector.areaCm2() * choice.wedges() / 1e4 * cut.cloth().weightGsm() / 1000, 1)
                + " kg of cloth on the shoulders.");
        notes.add(shoulders(sizes, choice, sector));
        if (cut.piecingCm() > 0) {
            notes.add("The cloth is narrower than the parts: they are pieced by seams along the grain, "
                    + Words.fixed(cut.piecingCm(), 0) + " cm in all."
                    + cut.shorterForOnePanelFewerCm()
                            .map(cm -> " A cloak " + Words.fixed(cm, 1)
                                    + " cm shorter would need one panel fewer in each" + " part.")
                            .orElse(""));
        }
        notes.add(
                choice.middleOnGrain()
                        ? "The grain runs down the middle of each part, so both its sides hang alike; a nap runs down"
                                + " there too."
                        : "One straight edge of each part lies along the grain; on cloth with a nap or a pattern that has"
                                + " an up, the nap then runs down on one side, and across or up on the other: lay the"
                                + " middle of each part along the grain there (option middleOnGrain)"
                                + (choice.quarters() > 2 ? ", cut in quarters (option quarterWedges)." : "."));
        notes.add((sizes.overGroundCm() >= 0 ? "The hem ends " : "The hem drags ")
                + Words.number(Math.abs(sizes.overGroundCm()))
                + (sizes.overGroundCm() >= 0 ? " cm above" : " cm on")
                + " the ground of a wearer whose nape is " + Words.number(sizes.groundCm()) + " cm high.");
        return notes;
    }

    private static String shoulders(CloakSizes sizes, CloakChoice choice, CircleSector sector) {
        double roundCm = choice.angle() * (sector.innerCm() + SHOULDER_CM);
        double openCm = sizes.shoulderRoundCm() - roundCm;
        String there = "Round the shoulders, " + Words.number(SHOULDER_CM) + " cm below the neck, it is "
                + Words.fixed(roundCm, 0) + " cm wide; ";
        return openCm > 0
                ? there + "over " + Words.number(sizes.shoulderRoundCm()) + " cm it stands open by about "
                        + Words.fixed(openCm, 0) + " cm in front: more of a circle closes it."
                : there + "it closes over " + Words.number(sizes.shoulderRoundCm()) + " cm.";
    }

    private static List<String> cautions(CloakSizes sizes) {
        List<String> cautions = new ArrayList<>();
        if (sizes.overGroundCm() < LEAST_OVER_GROUND_CM) {
            cautions.add(
                    "So long a cloak drags in wet grass, is trodden on at steps and reaches embers on the ground: cut it "
                            + Words.number(LEAST_OVER_GROUND_CM)
                            + " cm above the ground at least, or carry it gathered.");
        }
        cautions.add(
                "A wide hem swings out as one turns: at a fire or a cooking place take the cloak off or gather it in.");
        return cautions;
    }
}
