package campcloth.advice.sample;

import java.util.SplittableRandom;

/**
 * Points of {@link Halton}'s sequence in the unit box, each dimension shifted around by a random length (Cranley and Patterson,
 * SIAM Journal on Numerical Analysis 13, 1976, 904-914, from memory) and in random order. The order lets several sets be used
 * beside each other as though they were drawn apart (Latin supercube sampling: Owen, ACM Transactions on Modeling and Computer
 * Simulation 8, 1998, 71-102, from memory): one set for the wearer, one for each cloth. The same seed gives the same points.
 */
public final class Points {

    private final int[] order;
    private final double[] shifts;

    private Points(int[] order, double[] shifts) {
        this.order = order;
        this.shifts = shifts;
    }

    public static Points of(int count, int dimensions, long seed) {
        if (dimensions > Halton.MOST_DIMENSIONS) {
            throw new IllegalArgumentException(dimensions + " dimensions are too many");
        }
        SplittableRandom random = new SplittableRandom(seed);
        double[] shifts = random.doubles(dimensions).toArray();
        return new Points(shuffled(count, random), shifts);
    }

    /** 0 to less than 1. */
    public double at(int point, int dimension) {
        double shifted = Halton.at(order[point] + 1, dimension) + shifts[dimension];
        return shifted < 1 ? shifted : shifted - 1;
    }

    private static int[] shuffled(int count, SplittableRandom random) {
        int[] order = new int[count];
        for (int i = 0; i < count; i++) {
            int to = random.nextInt(i + 1);
            order[i] = order[to];
            order[to] = i;
        }
        return order;
    }
}
