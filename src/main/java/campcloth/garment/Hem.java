package campcloth.garment;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How an edge is hemmed.
 *
 * @param edge which edge, in words
 * @param edgeLengthCm length sewn on one garment
 * @param allowanceCm cloth left beyond the finished edge, {@code shrinkageCm} included
 * @param shrinkageCm part of the allowance that washing takes
 * @param foldsCm depth of each fold, the raw edge's fold first
 * @param stitchFromFoldMm distance of the row that holds the hem from the fold beside it: from the inner fold where the edge
 *     is folded twice, from the finished edge where it is folded once, from the seam of a facing
 * @param secondRowFromEdgeMm distance from the finished edge of one more row, which only keeps the edge flat, where there is
 *     one
 * @param neatened whether the raw edge is neatened first
 * @param because why so
 */
public record Hem(
        String edge,
        double edgeLengthCm,
        double allowanceCm,
        double shrinkageCm,
        List<Double> foldsCm,
        double stitchFromFoldMm,
        OptionalDouble secondRowFromEdgeMm,
        boolean neatened,
        String because) {

    public Hem {
        foldsCm = List.copyOf(foldsCm);
    }

    /** Rows of stitches along the edge. */
    public int rows() {
        return secondRowFromEdgeMm.isPresent() ? 2 : 1;
    }

    /** Allowance without what washing takes. */
    public double washedAllowanceCm() {
        return allowanceCm - shrinkageCm;
    }

    /** Cloth that the folds leave over: extra length. */
    public double spareCm() {
        return washedAllowanceCm()
                - foldsCm.stream().mapToDouble(Double::doubleValue).sum();
    }

    Hem withShrinkage(double cm, String sentence) {
        return new Hem(
                edge,
                edgeLengthCm,
                allowanceCm + cm,
                shrinkageCm + cm,
                foldsCm,
                stitchFromFoldMm,
                secondRowFromEdgeMm,
                neatened,
                because + " " + sentence);
    }
}
