package campcloth.layout.search;

import java.util.Arrays;

/**
 * The Minkowski sum of two convex polygons: all sums of a point of one and a point of the other. Its edges are the edges of
 * both in the order of their directions (de Berg et al., "Computational Geometry", chapter 13: linear time).
 */
final class ConvexSum {

    private ConvexSum() {}

    static Ring of(Ring a, Ring b) {
        int sizeA = a.size();
        int sizeB = b.size();
        int startA = a.lowestCorner();
        int startB = b.lowestCorner();
        double[] x = new double[sizeA + sizeB];
        double[] y = new double[sizeA + sizeB];
        int count = 0;
        int i = 0;
        int j = 0;
        while (i < sizeA || j < sizeB) {
            int fromA = (startA + i) % sizeA;
            int fromB = (startB + j) % sizeB;
            x[count] = a.x[fromA] + b.x[fromB];
            y[count++] = a.y[fromA] + b.y[fromB];
            double turn = turn(a, fromA, b, fromB);
            boolean stepA = i < sizeA && (j == sizeB || turn >= 0);
            boolean stepB = j < sizeB && (i == sizeA || turn <= 0);
            i += stepA ? 1 : 0;
            j += stepB ? 1 : 0;
        }
        return Ring.of(Arrays.copyOf(x, count), Arrays.copyOf(y, count)).withoutFlatCorners();
    }

    private static double turn(Ring a, int fromA, Ring b, int fromB) {
        int toA = a.next(fromA);
        int toB = b.next(fromB);
        return (a.x[toA] - a.x[fromA]) * (b.y[toB] - b.y[fromB]) - (a.y[toA] - a.y[fromA]) * (b.x[toB] - b.x[fromB]);
    }
}
