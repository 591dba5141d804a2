package campcloth.garment.design;

import campcloth.garment.HemEdge;
import campcloth.garment.SewingStage;
import campcloth.garment.SewingStep;
import java.util.ArrayList;
import java.util.List;

/** The order of sewing a garment of the upper body; common practice, no source. */
final class BodySteps {

    private BodySteps() {}

    static List<SewingStep> of(BodyChoice choice) {
        List<SewingStep> steps = new ArrayList<>();
        addPiecing(choice, steps);
        steps.addAll(choice.neck().steps(choice.onePiece() ? "body" : ""));
        Gores gores = choice.gores();
        if (gores.frontAndBack()) {
            steps.add(SewingStep.seams(
                    SewingStage.INSETS,
                    "Set the gores into front and back from the tip down, one side at a time.",
                    Gores.MIDDLE_SEAM));
        }
        steps.add(SewingStep.seams(
                SewingStage.SLEEVES,
                "Sew the sleeves on flat, their middle at the " + (choice.onePiece() ? "fold" : "shoulder seam")
                        + ", and press towards the body.",
                "sleeves to body"));
        if (choice.gussetCm() > 0) {
            steps.add(SewingStep.seams(
                    SewingStage.INSETS,
                    "Sew a gusset to each sleeve below its armhole, then to the body on the other side.",
                    "gussets"));
        }
        if (gores.sides()) {
            steps.add(SewingStep.seams(
                    SewingStage.INSETS,
                    "Sew one side of each side gore to the front from the tip down.",
                    Gores.SIDE_SEAM));
        }
        steps.add(SewingStep.of(SewingStage.FITTING, "Try it on: pin the sides, mark what to let out or take in."));
        steps.add(SewingStep.seams(
                SewingStage.CLOSING,
                "Close side and sleeve in one seam from hem to cuff" + leftOpen(choice),
                "sides and sleeves"));
        addEnds(choice, steps);
        return steps;
    }

    private static void addPiecing(BodyChoice choice, List<SewingStep> steps) {
        Gores gores = choice.gores();
        if (gores.halved()) {
            steps.add(SewingStep.seams(
                    SewingStage.PIECING,
                    "Sew the halves of the gores together along their upright sides and press.",
                    Gores.HALVES_SEAM));
        }
        if (choice.centreSeams()) {
            steps.add(SewingStep.seams(
                    SewingStage.PIECING,
                    "Sew the centre seams of front and back and press them open"
                            + (gores.frontAndBack() ? ", open below for the gores." : "."),
                    "centre front and back"));
        }
    }

    private static void addEnds(BodyChoice choice, List<SewingStep> steps) {
        boolean banded = choice.bandCm() > 0;
        if (banded) {
            steps.add(SewingStep.seams(
                            SewingStage.BANDS,
                            "Hem the open ends of the sleeve seams, gather each sleeve's end into its band, fold the"
                                    + " band over, stitch it down, work a buttonhole and sew on the button.",
                            "cuff bands")
                    .hemming(HemEdge.Kind.WRIST_SLIT));
        }
        List<HemEdge.Kind> edges = new ArrayList<>(List.of(HemEdge.Kind.BODY));
        if (!banded) {
            edges.add(HemEdge.Kind.CUFF);
        }
        if (choice.splitCm() > 0) {
            edges.add(HemEdge.Kind.SIDE_SPLIT);
        }
        steps.add(SewingStep.hems(
                SewingStage.HEMS,
                "Let it hang a day, level the hem, then hem " + (banded ? "it" : "cuffs and hem")
                        + (choice.splitCm() > 0 ? ", the splits first." : "."),
                edges.toArray(HemEdge.Kind[]::new)));
    }

    private static String leftOpen(BodyChoice choice) {
        if (choice.splitCm() > 0) {
            return ", leaving the splits open.";
        }
        return choice.bandCm() > 0 ? ", leaving the last 8 cm of the sleeve open." : ".";
    }
}
