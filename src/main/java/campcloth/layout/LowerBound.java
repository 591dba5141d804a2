package campcloth.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * A length below which no layout of some pieces on a strip can fall: the largest of
 *
 * <ul>
 *   <li>the area of the pieces divided by the width;
 *   <li>the longest piece;
 *   <li>for dual feasible functions f ({@link DualFeasible}): the sum over the pieces of the integral along the cloth of f
 *       of each cross-section's part of the width, since the cross-sections at one height fit side by side. Among them is the
 *       length that pieces wider than half the cloth need, of which no two lie side by side.
 * </ul>
 *
 * The gap between pieces is left out, which makes the bound lower, never too high. Outlines of more than {@value
 * #MOST_POINTS} points count with their area and length only.
 */
public final class LowerBound {

    private static final int MOST_POINTS = 1000;
    private static final double NOTHING_CM = 1e-6;
    private static final double ROUNDING = 1 - 1e-12;

    private record Sections(int count, List<CrossSections.Section> sections) {}

    private LowerBound() {}

    /** The bound in cm. */
    public static double cm(Strip strip, List<Piece> pieces) {
        double width = strip.usableWidthCm();
        double bound = 0;
        double area = 0;
        List<Sections> all = new ArrayList<>();
        List<Double> widest = new ArrayList<>();
        for (Piece piece : pieces) {
            Outline outline = piece.outline();
            bound = Math.max(bound, outline.heightCm());
            area += piece.count() * outline.areaCm2();
            if (outline.points().size() <= MOST_POINTS) {
                all.add(new Sections(piece.count(), CrossSections.of(outline)));
                widest.add(outline.widthCm() / width);
            }
        }
        bound = Math.max(bound, area / width);
        for (DualFeasible function : DualFeasible.all(widest.stream().distinct().toList())) {
            bound = Math.max(bound, sideBySide(function, all, width));
        }
        return onBolt(strip, pieces, bound * ROUNDING);
    }

    /**
     * What of a bound is left for the bolt: laid one after the other, the lengths at hand and the bolt make one strip; and a
     * piece that fits on no length at hand lies on the bolt. The edges at both ends come on top.
     */
    private static double onBolt(Strip strip, List<Piece> pieces, double bound) {
        double left = bound;
        for (AtHand length : strip.atHand()) {
            left -= Math.max(0, length.lengthCm() - 2 * strip.edgeGapCm());
        }
        for (Piece piece : pieces) {
            if (strip.atHand().stream().noneMatch(length -> fits(piece.outline(), length, strip))) {
                left = Math.max(left, piece.outline().heightCm() * ROUNDING);
            }
        }
        return left < NOTHING_CM ? 0 : left + 2 * strip.edgeGapCm();
    }

    private static boolean fits(Outline outline, AtHand length, Strip strip) {
        return outline.widthCm() <= strip.usableWidthCm(length) + NOTHING_CM
                && outline.heightCm() <= length.lengthCm() - 2 * strip.edgeGapCm() + NOTHING_CM;
    }

    private static double sideBySide(DualFeasible function, List<Sections> all, double width) {
        double length = 0;
        for (Sections piece : all) {
            double own = 0;
            for (CrossSections.Section section : piece.sections) {
                own += section.heightCm() * function.mean(section.lowWidthCm() / width, section.highWidthCm() / width);
            }
            length += piece.count * own;
        }
        return length;
    }
}
