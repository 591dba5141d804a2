package campcloth.comfort.model;

import java.util.function.DoubleUnaryOperator;

/** Roots of functions of one variable by bisection: cannot run away and needs no derivative. */
final class Root {

    private Root() {}

    /**
     * Where a function that does not fall passes zero.
     *
     * @param low where the function is not above zero
     * @param high where the function is not below zero
     * @param tolerance width of the last bracket; its middle is given back
     */
    static double ofRising(DoubleUnaryOperator function, double low, double high, double tolerance) {
        double below = low;
        double above = high;
        while (above - below > tolerance) {
            double middle = (below + above) / 2;
            if (function.applyAsDouble(middle) < 0) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return (below + above) / 2;
    }
}
