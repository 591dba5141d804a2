package campcloth.garment.design;

import campcloth.layout.Outline;
import campcloth.layout.Point;
import java.util.ArrayList;
import java.util.List;

/** Outlines of flat panels, the lower left corner of the bounding box at the origin, the hem at the bottom. */
final class Panels {

    private Panels() {}

    /**
     * A body panel: straight from the shoulder to the armhole's depth, from there widening on a straight line to the
     * finished hem, straight again through the hem's allowance.
     *
     * @param topWidthCm width at the top
     * @param leftFlareCm how much wider it is at the hem on the left
     * @param rightFlareCm the same on the right
     * @param heightCm whole height, allowances included
     * @param flareFromCm height above the bottom at which the flare begins
     * @param hemCm height of the hem's allowance
     */
    static Outline flared(
            double topWidthCm,
            double leftFlareCm,
            double rightFlareCm,
            double heightCm,
            double flareFromCm,
            double hemCm) {
        double right = leftFlareCm + topWidthCm;
        if (leftFlareCm == 0 && rightFlareCm == 0) {
            return Outline.rectangle(topWidthCm, heightCm);
        }
        return withoutFlatCorners(List.of(
                new Point(0, 0),
                new Point(right + rightFlareCm, 0),
                new Point(right + rightFlareCm, hemCm),
                new Point(right, flareFromCm),
                new Point(right, heightCm),
                new Point(leftFlareCm, heightCm),
                new Point(leftFlareCm, flareFromCm),
                new Point(0, hemCm)));
    }

    /**
     * A sleeve, cuff at the bottom: straight through both allowances, tapering in between.
     *
     * @param topWidthCm width at the shoulder
     * @param cuffWidthCm width at the cuff
     * @param heightCm whole height, allowances included
     * @param topAllowanceCm height of the allowance at the shoulder
     * @param cuffAllowanceCm height of the allowance at the cuff
     */
    static Outline sleeve(
            double topWidthCm, double cuffWidthCm, double heightCm, double topAllowanceCm, double cuffAllowanceCm) {
        if (topWidthCm == cuffWidthCm) {
            return Outline.rectangle(topWidthCm, heightCm);
        }
        double middle = Math.max(topWidthCm, cuffWidthCm) / 2;
        double top = topWidthCm / 2;
        double cuff = cuffWidthCm / 2;
        double shoulderCm = heightCm - topAllowanceCm;
        return Outline.of(List.of(
                new Point(middle - cuff, 0),
                new Point(middle + cuff, 0),
                new Point(middle + cuff, cuffAllowanceCm),
                new Point(middle + top, shoulderCm),
                new Point(middle + top, heightCm),
                new Point(middle - top, heightCm),
                new Point(middle - top, shoulderCm),
                new Point(middle - cuff, cuffAllowanceCm)));
    }

    /**
     * A body in one piece over the shoulder: {@link #flared} with its mirror image on top of it, the fold halfway up.
     *
     * @param halfHeightCm height from the lower edge to the fold, the hem's allowance included
     */
    static Outline overShoulder(
            double topWidthCm,
            double leftFlareCm,
            double rightFlareCm,
            double halfHeightCm,
            double flareFromCm,
            double hemCm) {
        double heightCm = 2 * halfHeightCm;
        double right = leftFlareCm + topWidthCm;
        return withoutFlatCorners(List.of(
                new Point(0, 0),
                new Point(right + rightFlareCm, 0),
                new Point(right + rightFlareCm, hemCm),
                new Point(right, flareFromCm),
                new Point(right, heightCm - flareFromCm),
                new Point(right + rightFlareCm, heightCm - hemCm),
                new Point(right + rightFlareCm, heightCm),
                new Point(0, heightCm),
                new Point(0, heightCm - hemCm),
                new Point(leftFlareCm, heightCm - flareFromCm),
                new Point(leftFlareCm, flareFromCm),
                new Point(0, hemCm)));
    }

    /**
     * A triangle with its allowances: straight through the hem's, the seams' beside its sides, cut off level above its tip.
     *
     * @param widthCm width at the hem's line, without allowances
     * @param heightCm height of the tip above that line
     * @param seamCm allowance beside the sides and above the tip
     * @param hemCm height of the hem's allowance
     */
    static Outline gore(double widthCm, double heightCm, double seamCm, double hemCm) {
        double low = widthCm / 2 + beside(widthCm / 2, heightCm, seamCm);
        double top = low - widthCm / 2 * (1 + seamCm / heightCm);
        double heightAll = hemCm + heightCm + seamCm;
        return Outline.of(List.of(
                new Point(0, 0),
                new Point(2 * low, 0),
                new Point(2 * low, hemCm),
                new Point(low + top, heightAll),
                new Point(low - top, heightAll),
                new Point(0, hemCm)));
    }

    /** The right half of a {@link #gore} of twice the width, its upright side on the left with a seam's allowance. */
    static Outline halfGore(double widthCm, double heightCm, double seamCm, double hemCm) {
        double low = seamCm + widthCm + beside(widthCm, heightCm, seamCm);
        double top = low - widthCm * (1 + seamCm / heightCm);
        double heightAll = hemCm + heightCm + seamCm;
        return Outline.of(List.of(
                new Point(0, 0),
                new Point(low, 0),
                new Point(low, hemCm),
                new Point(top, heightAll),
                new Point(0, heightAll)));
    }

    /** Level width of an allowance beside a side that leans in by so much over its height. */
    private static double beside(double leansCm, double heightCm, double seamCm) {
        return seamCm * Math.hypot(1, leansCm / heightCm);
    }

    /** Leaves out corners that lie on the straight line between their neighbours on an upright edge. */
    private static Outline withoutFlatCorners(List<Point> corners) {
        int size = corners.size();
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            double x = corners.get(i).xCm();
            boolean flat = corners.get((i + size - 1) % size).xCm() == x
                    && corners.get((i + 1) % size).xCm() == x;
            if (!flat) {
                kept.add(corners.get(i));
            }
        }
        return Outline.of(kept);
    }
}
