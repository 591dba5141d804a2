package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.GarmentPiece;
import campcloth.garment.Seam;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * Triangles set into the lower part of a body. Each is cut with a straight hem and as high as the opening that it is set into;
 * its slanted sides are a little longer than that, which is rounded off when the hem is levelled, so that all sewn edges are
 * as long as their openings. Where there is no seam in the middle of front and back, the gore stands in a slit, whose edges
 * take the seam's allowance at the hem; the gore is cut wider by as much.
 *
 * @param widthCm how wide each is at the hem when sewn in
 * @param heightCm how high it reaches above the hem
 * @param sides one in each side seam
 * @param frontAndBack one in the middle of front and of back
 * @param halved each in two half triangles
 */
record Gores(double widthCm, double heightCm, boolean sides, boolean frontAndBack, boolean halved) {

    /** Names of their seams. */
    static final String SIDE_SEAM = "side gores";

    static final String MIDDLE_SEAM = "gores of front and back";
    static final String HALVES_SEAM = "halves of the gores";

    static final Gores NONE = new Gores(0, 0, false, false, false);

    static Gores of(Chosen chosen) {
        boolean sides = chosen.yes(BodyOptions.SIDE_GORES);
        boolean frontAndBack = chosen.yes(BodyOptions.FRONT_BACK_GORES);
        if (!sides && !frontAndBack) {
            return NONE;
        }
        return new Gores(
                chosen.cm(BodyOptions.GORE_WIDTH),
                chosen.cm(BodyOptions.GORE_HEIGHT),
                sides,
                frontAndBack,
                chosen.yes(BodyOptions.HALVED_GORES));
    }

    int count() {
        return (sides ? 2 : 0) + (frontAndBack ? 2 : 0);
    }

    boolean any() {
        return count() > 0;
    }

    /** What they add to the width round at the hem. */
    double sweepCm() {
        return count() * widthCm;
    }

    /** Tangent of the angle between a gore's side and its own grain. */
    double tangent() {
        return any() ? widthCm / 2 / heightCm : 0;
    }

    /** Length of each side seam that they take. */
    double ofSideSeamCm() {
        return sides ? heightCm : 0;
    }

    /** Length of each centre seam that they take. */
    double ofCentreSeamCm() {
        return frontAndBack ? heightCm : 0;
    }

    void check(double sideSeamCm, double belowNeckCm) {
        if (sides && heightCm >= sideSeamCm) {
            throw tooHigh("the side seam", sideSeamCm);
        }
        if (frontAndBack && heightCm >= belowNeckCm) {
            throw tooHigh("the front below the neck slit", belowNeckCm);
        }
    }

    private static Refused tooHigh(String what, double cm) {
        return Refused.of(
                BodyOptions.GORE_HEIGHT,
                "is no shorter than " + what + " of " + Words.number(cm) + " cm",
                "give a lower gore");
    }

    /**
     * The pieces.
     *
     * @param centreSeams whether front and back have a seam in the middle
     * @param seamCm cloth beyond each seam line
     * @param washedHemCm cloth for the hem's folds
     */
    List<GarmentPiece> pieces(SewnCloth cloth, boolean centreSeams, double seamCm, double washedHemCm) {
        List<GarmentPiece> pieces = new ArrayList<>();
        if (sides) {
            pieces.add(piece("side gore", cloth, widthCm, seamCm, washedHemCm));
        }
        if (frontAndBack) {
            double cutCm = centreSeams ? widthCm : widthCm + 2 * seamCm;
            pieces.add(piece("front and back gore", cloth, cutCm, seamCm, washedHemCm));
        }
        return pieces;
    }

    private GarmentPiece piece(String name, SewnCloth cloth, double cm, double seamCm, double hemCm) {
        double acrossCm = cloth.acrossCm(cm);
        double alongCm = cloth.alongCm(heightCm);
        if (halved) {
            Outline half = Panels.halfGore(acrossCm / 2, alongCm, seamCm, hemCm);
            return new GarmentPiece(name + " half", half, 4, true, false).matchedAtHem();
        }
        return new GarmentPiece(name, Panels.gore(acrossCm, alongCm, seamCm, hemCm), 2, false, true).matchedAtHem();
    }

    List<Seam> seams(SewnCloth cloth) {
        List<Seam> seams = new ArrayList<>();
        if (sides) {
            seams.add(Seam.pressedOpen(SIDE_SEAM, 2 * 2 * heightCm, cloth));
        }
        if (frontAndBack) {
            seams.add(Seam.pressedOpen(MIDDLE_SEAM, 2 * 2 * heightCm, cloth));
        }
        if (halved) {
            seams.add(Seam.pressedOpen(HALVES_SEAM, count() * heightCm, cloth));
        }
        return seams;
    }

    List<String> notes(boolean centreSeams) {
        if (!any()) {
            return List.of();
        }
        List<String> notes = new ArrayList<>();
        double longerCm = Math.hypot(heightCm, widthCm / 2) - heightCm;
        notes.add("Each gore is cut " + Words.number(heightCm) + " cm high along its middle; its sides are "
                + Words.fixed(longerCm, 1) + " cm longer than their opening: let it hang and round the corners off.");
        if (frontAndBack && !centreSeams) {
            notes.add("Slit front and back " + Words.number(heightCm)
                    + " cm up their middle for the gores; the slit's seam narrows to nothing at the tip, stay-stitch"
                    + " it before it is cut.");
        }
        return notes;
    }
}
