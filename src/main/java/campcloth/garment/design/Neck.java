package campcloth.garment.design;

import campcloth.figure.Refused;
import campcloth.figure.Words;
import campcloth.garment.GarmentPiece;
import campcloth.garment.HemEdge;
import campcloth.garment.Opening;
import campcloth.garment.Scrap;
import campcloth.garment.Seam;
import campcloth.garment.SewingStage;
import campcloth.garment.SewingStep;
import campcloth.garment.SewnCloth;
import campcloth.garment.Stitch;
import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A faced neck, round or square, with a front slit (common practice, no source: a circle of 15 cm with a slit of 8 cm, faced
 * 4 cm wide). It is cut after the shoulders are sewn, 1 cm inside the finished edge, and takes no cloth of its own. What is
 * taken up by the slit's own seam is left out.
 *
 * @param acrossCm diameter of the circle, side of the square
 * @param slitCm front slit
 * @param square square in place of round
 * @param headCm circumference of the head that must pass
 */
record Neck(double acrossCm, double slitCm, boolean square, double headCm) {

    /** Names of seams. */
    static final String SHOULDER_SEAM = "shoulders";

    private static final String FACING_SEAM = "facing to neck";
    private static final String FACING_EDGE = "outer edge of the facing";

    private static final double FACING_CM = 4;
    private static final double INSIDE_CM = 1;
    /** Project choice: what the opening must have over the head to pass it. */
    private static final double HEAD_EASE_CM = 2;

    private static final double HALF_CM = 0.5;

    private static final int CORNERS = 48;

    /** Refuses a neck that leaves no shoulder beside it. */
    static void checkBeside(double acrossCm, double frontCm) {
        if (acrossCm >= frontCm) {
            throw Refused.of(
                    UpperBody.NECK.key(),
                    "is no less than the front's width of " + Words.number(frontCm) + " cm",
                    "leave some shoulder beside the neck");
        }
    }

    /** Refuses a slit that reaches the hem. */
    void checkAbove(double lengthCm) {
        if (slitCm >= lengthCm - acrossCm) {
            throw Refused.of(BodyOptions.SLIT, "reaches the hem", "give a shorter slit");
        }
    }

    Opening opening() {
        double halfCmGivesCm = square ? 4 * 2 * HALF_CM : Math.PI * 2 * HALF_CM;
        return new Opening(
                "neck",
                square ? 4 * acrossCm / Math.PI : acrossCm,
                slitCm,
                headCm,
                HEAD_EASE_CM,
                Optional.of(halfCmGivesCm));
    }

    HemEdge hemEdge() {
        return new HemEdge(
                square ? HemEdge.Kind.SQUARE_NECK : HemEdge.Kind.NECK, opening().edgeCm(), 0, acrossCm, 0);
    }

    List<Seam> seams(SewnCloth cloth) {
        double outerCm = acrossCm + 2 * FACING_CM;
        double facingEdge = (square ? 4 * outerCm : Math.PI * outerCm) + 2 * slitCm + 2 * FACING_CM;
        return List.of(
                new Seam(FACING_SEAM, opening().edgeCm(), Stitch.LOCK_301, 0),
                new Seam(FACING_EDGE, facingEdge, Stitch.LOCK_301, cloth.holdsItsCutEdge() ? 0 : 1));
    }

    /** The facing in one piece, 4 cm beyond neck and slit all round; the hole is cut when it is sewn on. */
    GarmentPiece facing(SewnCloth cloth) {
        double out = acrossCm / 2 + FACING_CM;
        List<Point> around = new ArrayList<>(square ? squareAround(out) : circleAround(out));
        if (slitCm > 0) {
            around.add(new Point(FACING_CM, -out - slitCm));
            around.add(new Point(-FACING_CM, -out - slitCm));
        }
        Outline outline = Outline.of(around.stream()
                .map(p -> new Point(cloth.acrossCm(p.xCm()), cloth.alongCm(p.yCm())))
                .toList());
        return new GarmentPiece(Scrap.FACING, outline.movedTo(0, 0), 1, false, true);
    }

    /** From where the slit's facing leaves it on the left, clockwise over the back, to the right. */
    private List<Point> circleAround(double radiusCm) {
        double half = slitCm > 0 ? Math.asin(FACING_CM / radiusCm) : Math.PI / CORNERS;
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= CORNERS; i++) {
            double angle = half + (2 * Math.PI - 2 * half) * i / CORNERS;
            points.add(new Point(-radiusCm * Math.sin(angle), -radiusCm * Math.cos(angle)));
        }
        return points;
    }

    private List<Point> squareAround(double out) {
        List<Point> points = new ArrayList<>();
        if (slitCm > 0) {
            points.add(new Point(-FACING_CM, -out));
        }
        points.addAll(List.of(new Point(-out, -out), new Point(-out, out), new Point(out, out), new Point(out, -out)));
        if (slitCm > 0) {
            points.add(new Point(FACING_CM, -out));
        }
        return points;
    }

    /**
     * How to cut it.
     *
     * @param when such as {@code after the shoulder seams}
     */
    String note(String when) {
        double insideCm = acrossCm - 2 * INSIDE_CM;
        String shape = square
                ? "a square with sides of " + Words.number(insideCm) + " cm, "
                : "a circle " + Words.number(insideCm) + " cm across, ";
        return "Cut the neck " + when + ": " + shape + "1 cm inside the finished neck"
                + (slitCm > 0 ? ", and a front slit of " + Words.number(slitCm) + " cm" : "")
                + "; stay-stitch the edge. The facing, " + Words.number(FACING_CM)
                + " cm wide, comes from a scrap of about " + Words.number(Scrap.sideCm(acrossCm + 2 * FACING_CM))
                + " x "
                + Words.number(Scrap.sideCm(acrossCm + 2 * FACING_CM + slitCm)) + " cm.";
    }

    /**
     * Shoulders and facing.
     *
     * @param folded what is folded at the shoulder, in words; empty where there is a shoulder seam
     */
    List<SewingStep> steps(String folded) {
        String cut = "cut the neck and stay-stitch its edge.";
        SewingStep shoulders = folded.isEmpty()
                ? SewingStep.seams(SewingStage.BODY, "Sew the shoulder seams, press them open, " + cut, SHOULDER_SEAM)
                : SewingStep.of(SewingStage.BODY, "Fold the " + folded + " at the shoulder, " + cut);
        SewingStep facing = SewingStep.seams(
                        SewingStage.NECK,
                        "Sew the facing right side to right side round neck and slit, clip "
                                + (square ? "into the corners" : "the curve")
                                + ", turn it in, press, and stitch its outer edge down.",
                        FACING_SEAM,
                        FACING_EDGE)
                .hemming(hemEdge().kind());
        return List.of(shoulders, facing);
    }

    List<String> cautions() {
        Opening neck = opening();
        if (neck.passes()) {
            return List.of();
        }
        return List.of("The neck opening of " + Words.fixed(neck.edgeCm(), 0) + " cm will hardly pass a head of "
                + Words.number(neck.bodyCm()) + " cm: make the front slit " + Words.fixed(neck.slitWantedCm(), 0)
                + " cm long.");
    }
}
