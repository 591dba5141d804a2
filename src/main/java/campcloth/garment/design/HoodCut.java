package campcloth.garment.design;

import campcloth.garment.GarmentPiece;
import campcloth.garment.Hem;
import campcloth.garment.SewnCloth;
import campcloth.layout.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * The pieces of a hood. A half has the face edge in front along the grain, the crown above, rounded towards the back; below the
 * neck the cape. With gores the cape's own seams are straight, and the gores stand in slits on the shoulders, whose edges take
 * the seam's allowance at the hem; the gores are cut wider by as much. Without, the seams flare, in front and behind alike, or
 * in front alone where the back lies on a fold. Seams and face edge 1.5 cm where no other is chosen (common practice, no
 * source), 5 mm more on cloth that frays.
 */
record HoodCut(HoodSizes sizes, HoodChoice choice, SewnCloth cloth, Hem hem) {

    /** Closed part of the front above the neck; common practice, no source. */
    static final double THROAT_CM = 6;

    private static final double CROWN_SHARE = 0.4;
    private static final int CROWN_CUTS = 6;

    double seamAllowanceCm() {
        return cloth.seamAllowanceCm(choice.seamCm());
    }

    static double halfNeckCm(HoodSizes sizes, HoodChoice choice) {
        return sizes.neckRoundCm(choice.slitCm()) / 2;
    }

    /** How much wider than the neck a half is at the cape's hem, all of it. */
    static double wideningCm(HoodSizes sizes, HoodChoice choice) {
        return sizes.capeRoundCm(choice.slitCm()) / 2 - halfNeckCm(sizes, choice);
    }

    static double frontFlareCm(HoodSizes sizes, HoodChoice choice) {
        if (choice.gores()) {
            return 0;
        }
        return choice.backOnFold() ? wideningCm(sizes, choice) : wideningCm(sizes, choice) / 2;
    }

    private double backFlareCm() {
        return choice.gores() || choice.backOnFold() ? 0 : wideningCm(sizes, choice) / 2;
    }

    boolean hasGores() {
        return choice.gores() && wideningCm(sizes, choice) > 0;
    }

    List<GarmentPiece> pieces() {
        List<GarmentPiece> pieces = new ArrayList<>();
        pieces.add(
                choice.backOnFold()
                        ? new GarmentPiece("hood", onFold(), 1, false, true).matchedAtHem()
                        : new GarmentPiece("hood half", half(), 2, true, false).matchedAtHem());
        if (hasGores()) {
            double hemWidth = cloth.acrossCm(wideningCm(sizes, choice)) + 2 * seamAllowanceCm();
            Outline gore = FlaredStrip.between(hemWidth, 0, capeCm())
                    .outline(seamAllowanceCm(), seamAllowanceCm(), hem.washedAllowanceCm());
            pieces.add(new GarmentPiece("shoulder gore", gore, 2, false, true).matchedAtHem());
        }
        return pieces;
    }

    private double capeCm() {
        return cloth.alongCm(sizes.capeCm());
    }

    private double throatCm() {
        return Math.min(cloth.alongCm(THROAT_CM), topCm() / 2);
    }

    private double topCm() {
        return cloth.alongCm(sizes.heightCm());
    }

    private double depthCm() {
        return cloth.acrossCm(sizes.depthCm());
    }

    /** Neck level at y = 0, the face to the left, so that the corners run counter-clockwise. */
    private Outline half() {
        double seam = seamAllowanceCm();
        double neck = cloth.acrossCm(halfNeckCm(sizes, choice));
        double depth = depthCm();
        double round = CROWN_SHARE * Math.min(depth, topCm());
        double front = cloth.acrossCm(frontFlareCm(sizes, choice));
        CutPolygon half = new CutPolygon()
                .corner(-front, -capeCm(), hem.washedAllowanceCm())
                .corner(neck + cloth.acrossCm(backFlareCm()), -capeCm(), seam)
                .corner(neck, 0, seam)
                .corner(depth, throatCm(), seam);
        // straight cuts that touch the round of the crown from outside
        double step = Math.PI / 2 / CROWN_CUTS;
        double reach = round / Math.cos(step / 2);
        for (int i = 0; i < CROWN_CUTS; i++) {
            double direction = (i + 0.5) * step;
            half.corner(
                    depth - round + reach * Math.cos(direction), topCm() - round + reach * Math.sin(direction), seam);
        }
        return half.corner(0, topCm(), seam).corner(0, 0, seam).outline();
    }

    /** Both halves unfolded about the back, which is straight; as deep at the neck as at the head. */
    private Outline onFold() {
        double seam = seamAllowanceCm();
        double half = Math.max(cloth.acrossCm(halfNeckCm(sizes, choice)), depthCm());
        double front = half + cloth.acrossCm(frontFlareCm(sizes, choice));
        return new CutPolygon()
                .corner(-front, -capeCm(), hem.washedAllowanceCm())
                .corner(front, -capeCm(), seam)
                .corner(half, 0, seam)
                .corner(half, topCm(), seam)
                .corner(-half, topCm(), seam)
                .corner(-half, 0, seam)
                .outline();
    }
}
