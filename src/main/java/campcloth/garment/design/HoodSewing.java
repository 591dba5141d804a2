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
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Seams, hems and what to know of a hood. Lengths along the finished seam lines. */
final class HoodSewing {

    private static final double BUTTON_STEP_CM = 4;

    private HoodSewing() {}

    static Garment garment(HoodSizes sizes, HoodChoice choice, SewnCloth cloth) {
        List<Hem> hems = hems(sizes, choice, cloth);
        HoodCut cut = new HoodCut(sizes, choice, cloth, hems.get(0));
        Opening neck = Opening.ofTube(
                "neck", sizes.neckRoundCm(choice.slitCm()), choice.slitCm(), sizes.headCm(), HoodSizes.PASS_EASE_CM);
        double widestCm = cut.pieces().stream()
                .mapToDouble(p -> p.outline().widthCm())
                .max()
                .orElseThrow();
        return new Garment(
                "hood",
                cut.pieces(),
                List.of(),
                new Sewing(seams(cut), hems, cut.seamAllowanceCm(), steps(cut), notions(choice)),
                new Fitting(Optional.of(neck), rooms(cut)),
                new LengthRule(choice.backOnFold() ? 1 : 2, widestCm, sizes.heightCm() + sizes.capeCm(), 0),
                List.of(new Saving(HoodSizes.CAPE.key(), "cape", Saving.Kind.SHORTER, sizes.capeCm())),
                notes(cut),
                cautions(neck));
    }

    private static List<Hem> hems(HoodSizes sizes, HoodChoice choice, SewnCloth cloth) {
        double capeRoundCm = sizes.capeRoundCm(choice.slitCm());
        double widening = HoodCut.wideningCm(sizes, choice);
        double panelCm = choice.gores() && widening > 0 ? widening : capeRoundCm / 2;
        double tangent =
                choice.gores() ? widening / 2 / sizes.capeCm() : HoodCut.frontFlareCm(sizes, choice) / sizes.capeCm();
        double leftCm = Math.min(choice.seamCm(), HemEdge.Kind.FACE.usualAllowanceCm());
        List<HemEdge> edges = new ArrayList<>();
        edges.add(new HemEdge(HemEdge.Kind.BODY, capeRoundCm, sizes.capeCm(), panelCm, tangent, choice.hemCm()));
        double faceCm = 2 * (sizes.heightCm() - HoodCut.THROAT_CM);
        edges.add(new HemEdge(HemEdge.Kind.FACE, faceCm, 0, sizes.depthCm(), 0, leftCm));
        if (choice.slitCm() > 0) {
            edges.add(new HemEdge(HemEdge.Kind.FRONT, 2 * choice.slitCm(), 0, sizes.depthCm(), 0, leftCm));
        }
        return edges.stream().map(edge -> HemRules.hem(edge, cloth)).toList();
    }

    private static double frontCm(HoodCut cut) {
        HoodSizes sizes = cut.sizes();
        return HoodCut.THROAT_CM
                + Math.hypot(sizes.capeCm(), HoodCut.frontFlareCm(sizes, cut.choice()))
                - cut.choice().slitCm();
    }

    private static List<Seam> seams(HoodCut cut) {
        HoodSizes sizes = cut.sizes();
        List<Seam> seams = new ArrayList<>();
        if (cut.choice().backOnFold()) {
            seams.add(Seam.pressedOpen("crown", sizes.depthCm(), cut.cloth()));
        } else {
            double flare = cut.choice().gores() ? 0 : HoodCut.wideningCm(sizes, cut.choice()) / 2;
            double backCm = sizes.depthCm() + sizes.heightCm() + Math.hypot(sizes.capeCm(), flare);
            seams.add(Seam.pressedOpen("crown and back", backCm, cut.cloth()));
        }
        if (frontCm(cut) > 0) {
            seams.add(Seam.pressedOpen("front", frontCm(cut), cut.cloth()));
        }
        if (cut.hasGores()) {
            seams.add(Seam.pressedOpen("gores to cape", 4 * sizes.capeCm(), cut.cloth()));
        }
        return seams;
    }

    private static List<SeamRoom> rooms(HoodCut cut) {
        double passCm = cut.choice().slitCm() > 0 ? 0 : cut.sizes().headCm() + HoodSizes.PASS_EASE_CM;
        double easeCm = cut.sizes().neckRoundCm(cut.choice().slitCm())
                - Math.max(cut.sizes().neckCm(), passCm);
        return List.of(SeamRoom.round(
                "front and back seams",
                "the neck",
                cut.choice().backOnFold() ? 1 : 2,
                cut.seamAllowanceCm(),
                Math.max(0, easeCm),
                0));
    }

    /** Common practice, no source. */
    private static List<SewingStep> steps(HoodCut cut) {
        List<SewingStep> steps = new ArrayList<>();
        if (cut.hasGores()) {
            steps.add(SewingStep.seams(
                    SewingStage.INSETS,
                    "Slit the cape on both shoulders from the hem up to the neck's base, stay-stitch the point and set in"
                            + " the gores, from the point down.",
                    "gores to cape"));
        }
        steps.add(
                cut.choice().backOnFold()
                        ? SewingStep.seams(
                                SewingStage.BODY, "Fold it and sew the crown from the face to the back.", "crown")
                        : SewingStep.seams(
                                SewingStage.BODY,
                                "Sew crown and back in one seam from the face to the hem; clip the round and press.",
                                "crown and back"));
        steps.add(
                SewingStep.of(
                        SewingStage.FITTING,
                        "Try it on: the neck must pass the head and the cape lie flat on the shoulders; pin what is too much."));
        steps.add(front(cut));
        steps.add(SewingStep.hems(
                SewingStage.HEMS,
                "Hem the face edge, let it hang a day, then level and hem the cape.",
                HemEdge.Kind.FACE,
                HemEdge.Kind.BODY));
        return steps;
    }

    private static SewingStep front(HoodCut cut) {
        double slitCm = cut.choice().slitCm();
        boolean seam = frontCm(cut) > 0;
        String open = slitCm > 0 ? "hem the slit and set buttons and loops." : "";
        SewingStep step = SewingStep.of(
                SewingStage.CLOSING,
                seam
                        ? "Sew the front from the hem up to the throat"
                                + (slitCm > 0
                                        ? ", leaving " + Words.number(slitCm) + " cm open below it; " + open
                                        : ".")
                        : "The front stays open from throat to hem: " + open);
        SewingStep sewn = seam ? step.sewing("front") : step;
        return slitCm > 0 ? sewn.hemming(HemEdge.Kind.FRONT) : sewn;
    }

    private static List<String> notions(HoodChoice choice) {
        int buttons = (int) Math.ceil(choice.slitCm() / BUTTON_STEP_CM);
        return buttons == 0 ? List.of() : List.of(buttons + (buttons == 1 ? " button" : " buttons") + " with loops");
    }

    private static List<String> notes(HoodCut cut) {
        HoodSizes sizes = cut.sizes();
        HoodChoice choice = cut.choice();
        List<String> notes = new ArrayList<>(sizes.notes());
        notes.add("The neck is " + Words.fixed(sizes.neckRoundCm(choice.slitCm()), 1) + " cm round"
                + (choice.slitCm() > 0 ? ", closed by buttons" : ", as wide as the head needs without a slit")
                + "; the cape is " + Words.fixed(sizes.capeRoundCm(choice.slitCm()), 0)
                + " cm round at its hem, widening evenly from the neck so as to go over the shoulders.");
        if (choice.backOnFold() && !cut.hasGores()) {
            notes.add("With the back on a fold all of the cape's width comes in at the front seam: gores sit better.");
        }
        if (sizes.capeCm() < HoodSizes.SHOULDER_DROP_CM) {
            notes.add("The cape ends above where the shoulders are widest, about "
                    + Words.number(HoodSizes.SHOULDER_DROP_CM)
                    + " cm down: in wind it lifts, and rain runs off onto the shoulders; 20 cm are usual.");
        }
        if (cut.hasGores()) {
            notes.add("The gores are " + Words.fixed(HoodCut.wideningCm(sizes, choice), 1)
                    + " cm wide at the hem when sewn in, a little longer at their sides than their slits: round that off"
                    + " when the hem is levelled.");
        }
        return notes;
    }

    private static List<String> cautions(Opening neck) {
        List<String> cautions = new ArrayList<>();
        if (!neck.passes()) {
            cautions.add("The neck opens " + Words.fixed(neck.edgeCm(), 0) + " cm and will hardly pass a head of "
                    + Words.number(neck.bodyCm()) + " cm: make the slit " + Words.fixed(neck.slitWantedCm(), 0)
                    + " cm long (option " + Hood.FRONT_SLIT.key() + ").");
        }
        cautions.add(
                "A hood takes away sight and hearing to the sides: push it back when working at a fire or in a crowd.");
        return cautions;
    }
}
