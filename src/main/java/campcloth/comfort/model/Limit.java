package campcloth.comfort.model;

import campcloth.comfort.Reading.OutOfRange;
import campcloth.figure.Range;
import campcloth.figure.Words;
import java.util.Optional;

/**
 * One limit of a model's validity and where the case at hand lies.
 *
 * @param range what the model accepts
 * @param actual the value at hand
 */
record Limit(Range range, double actual) {

    /** Why the model cannot be used, for the first limit that is passed; empty where it can. */
    static Optional<OutOfRange> firstPassed(String model, Limit... limits) {
        for (Limit limit : limits) {
            if (!limit.range.contains(limit.actual)) {
                return Optional.of(new OutOfRange(model, limit.words()));
            }
        }
        return Optional.empty();
    }

    private String words() {
        return range.field() + " is " + Words.number(actual) + " " + range.unit() + ", the model holds from "
                + Words.number(range.least()) + " to " + Words.number(range.most());
    }
}
