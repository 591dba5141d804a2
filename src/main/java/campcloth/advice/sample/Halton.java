package campcloth.advice.sample;

/**
 * Halton's sequence: points that fill a box more evenly than chance does. Component j of point i is the radical inverse of i in
 * the j-th prime: its digits mirrored at the point (J. H. Halton, Numerische Mathematik 2, 1960, 84-90, from memory; values
 * checked against a public program). Good in few dimensions only; here up to {@value #MOST_DIMENSIONS}.
 */
final class Halton {

    private static final int[] PRIMES = {2, 3, 5, 7, 11, 13};

    static final int MOST_DIMENSIONS = 6;

    private Halton() {}

    /**
     * @param index from 0; the point of index 0 is the origin
     * @param dimension from 0
     * @return 0 to less than 1
     */
    static double at(int index, int dimension) {
        int base = PRIMES[dimension];
        double inverse = 0;
        double digit = 1.0 / base;
        for (int rest = index; rest > 0; rest /= base) {
            inverse += digit * (rest % base);
            digit /= base;
        }
        return inverse;
    }
}
