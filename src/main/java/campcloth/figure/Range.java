package campcloth.figure;

/**
 * The values a quantity may take, both ends included.
 *
 * @param field name of the quantity, with its unit in the name
 * @param least smallest value accepted
 * @param most largest value accepted
 * @param unit unit as shown to people
 */
public record Range(String field, double least, double most, String unit) {

    /** Gives the value back, or refuses it: not a number, infinite, or outside the range. */
    public double check(double value) {
        if (!contains(value)) {
            throw Refused.of(
                    field,
                    "is " + (Double.isFinite(value) ? Words.exact(value) : "not a finite number"),
                    "give a number from " + Words.exact(least) + " to " + Words.exact(most) + " " + unit);
        }
        return value;
    }

    public boolean contains(double value) {
        return Double.isFinite(value) && value >= least && value <= most;
    }
}
