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
