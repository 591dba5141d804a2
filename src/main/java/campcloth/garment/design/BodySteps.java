package campcloth.garment.design;

import java.util.ArrayList;
import java.util.List;

/** The order of sewing a garment of the upper body; common practice, no source. */
final class BodySteps {

    private BodySteps() {}

    static List<String> of(BodyChoice choice) {
        List<String> steps = new ArrayList<>();
        Gores gores = choice.gores();
        if (gores.halved()) {
            steps.add("Sew the halves of the gores together along their upright sides and press.");
        }
        if (choice.centreSeams()) {
            steps.add("Sew the centre seams of front and back and press them open"
                    + (gores.frontAndBack() ? ", open below for the gores." : "."));
        }
        steps.add(
                choice.onePiece()
                        ? "Fold the body at the shoulder, cut the neck and stay-stitch its edge."
                        : "Sew the shoulder seams, press them open, cut the neck and stay-stitch its edge.");
        steps.add(choice.neck().step());
        if (gores.frontAndBack()) {
            steps.add("Set the gores into front and back from the tip down, one side at a time.");
        }
        steps.add("Sew the sleeves on flat, their middle at the " + (choice.onePiece() ? "fold" : "shoulder seam")
                + ", and press towards the body.");
        if (choice.gussetCm() > 0) {
            steps.add("Sew a gusset to each sleeve below its armhole, then to the body on the other side.");
        }
        if (gores.sides()) {
            steps.add("Sew one side of each side gore to the front from the tip down.");
        }
        steps.add("Try it on: pin the sides, mark what to let out or take in.");
        steps.add("Close side and sleeve in one seam from hem to cuff" + leftOpen(choice));
        if (choice.bandCm() > 0) {
            steps.add(
                    "Hem the open ends of the sleeve seams, gather each sleeve's end into its band, fold the band over,"
                            + " stitch it down, work a buttonhole and sew on the button.");
        }
        steps.add("Let it hang a day, level the hem, then hem "
                + (choice.bandCm() > 0 ? "it" : "cuffs and hem")
                + (choice.splitCm() > 0 ? ", the splits first." : "."));
        return steps;
    }

    private static String leftOpen(BodyChoice choice) {
        if (choice.splitCm() > 0) {
            return ", leaving the splits open.";
        }
        return choice.bandCm() > 0 ? ", leaving the last 8 cm of the sleeve open." : ".";
    }
}
