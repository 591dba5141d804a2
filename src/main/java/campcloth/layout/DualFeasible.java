package campcloth.layout;

import java.util.ArrayList;
import java.util.List;

/**
 * Dual feasible functions: f maps parts of the cloth's width, 0 to 1, to 0 to 1 such that parts which fit side by side have
 * values that sum to at most 1 (S. P. Fekete, J. Schepers, "A general framework for bounds for higher-dimensional orthogonal
 * packing problems", arXiv cs/0402044). Parts closer than {@value #BLUR} to a step of the function count as lying on it, so
 * that rounding and touching never make a bound too large.
 */
interface DualFeasible {

    double BLUR = 1e-6;

    /** Change of a part that counts as none; the lesser value then holds. */
    double EVEN = 1e-4;

    /** Value for a part of the width. */
    double value(double part);

    /** Integral of the function from 0 to a part of the width. */
    double integral(double part);

    /** Mean value while a part changes evenly. */
    default double mean(double from, double to) {
        if (Math.abs(to - from) < EVEN) {
            return Math.min(value(from), value(to));
        }
        return (integral(to) - integral(from)) / (to - from);
    }

    /** The functions for k = 1..7 of one family, and the other at a half and at the widest parts of the pieces. */
    static List<DualFeasible> all(List<Double> widestParts) {
        List<DualFeasible> all = new ArrayList<>();
        for (int k = 1; k <= 7; k++) {
            all.add(new Stairs(k));
        }
        all.add(new Ends(0.5));
        for (double part : widestParts) {
            double e = part > 0.5 ? 1 - part + 3 * BLUR : part - 3 * BLUR;
            if (e > 0 && e < 0.5) {
                all.add(new Ends(e));
            }
        }
        return all;
    }

    /** The part itself where (k + 1) times it is whole, otherwise that product rounded down and divided by k. */
    record Stairs(int k) implements DualFeasible {

        @Override
        public double value(double part) {
            double steps = (k + 1) * part;
            double whole = Math.rint(steps);
            return Math.abs(steps - whole) <= BLUR * (k + 1) ? whole / (k + 1) : Math.floor(steps) / k;
        }

        @Override
        public double integral(double part) {
            double steps = Math.floor((k + 1) * part);
            return steps * (steps - 1) / 2 / k / (k + 1) + (part - steps / (k + 1)) * steps / k;
        }
    }

    /** 1 above 1 - e, 0 below e, the part itself between. */
    record Ends(double e) implements DualFeasible {

        @Override
        public double value(double part) {
            if (part > 1 - e + BLUR) {
                return 1;
            }
            return part < e - BLUR / 2 ? 0 : Math.min(part, 1);
        }

        @Override
        public double integral(double part) {
            double middle = Math.min(part, 1 - e);
            return Math.max(0, (middle * middle - e * e) / 2) + Math.max(0, part - (1 - e));
        }
    }
}
