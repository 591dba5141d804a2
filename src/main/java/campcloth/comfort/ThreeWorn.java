package campcloth.comfort;

import campcloth.comfort.Reading.OutOfRange;
import campcloth.comfort.Reading.Value;
import campcloth.comfort.model.TwoNode;
import campcloth.comfort.model.Worn;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Clothing as worn, for the best figures of its cloth and for both ends of their intervals.
 *
 * @param open of thin, open, breathing cloth
 * @param middle of cloth at its best figures
 * @param close of thick, tight, close cloth
 */
record ThreeWorn(Worn open, Worn middle, Worn close) {

    Value span(ToDoubleFunction<Worn> reading) {
        return Value.spanning(reading.applyAsDouble(middle), reading.applyAsDouble(open), reading.applyAsDouble(close));
    }

    /** One reading over all three; out of range where the middle is; an end that is out of range adds nothing. */
    Reading spanReadings(Function<Worn, Reading> reading) {
        Reading best = reading.apply(middle);
        return best.inRange()
                .<Reading>map(value -> {
                    double v = value.value();
                    return Value.spanning(v, at(open, reading, v), at(close, reading, v));
                })
                .orElse(best);
    }

    private double at(Worn end, Function<Worn, Reading> reading, double middleValue) {
        return end.equals(middle)
                ? middleValue
                : reading.apply(end).inRange().map(Value::value).orElse(middleValue);
    }

    /** Why the two-node model does not hold for one of the three; empty where it does for all. */
    Optional<OutOfRange> outside(Surroundings around) {
        return Stream.of(middle, open, close)
                .flatMap(worn -> TwoNode.outside(around.air(), around.highMet(), worn).stream())
                .findFirst();
    }
}
