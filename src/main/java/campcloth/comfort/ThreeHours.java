package campcloth.comfort;

import campcloth.comfort.Reading.Value;
import java.util.function.ToDoubleFunction;

/** The body after an hour in the clothing at both ends and at its best figures. */
record ThreeHours(Hour open, Hour middle, Hour close) {

    static ThreeHours of(ThreeWorn worn, Physics spell) {
        Hour middle = spell.hour(worn.middle());
        return new ThreeHours(
                worn.open().equals(worn.middle()) ? middle : spell.hour(worn.open()),
                middle,
                worn.close().equals(worn.middle()) ? middle : spell.hour(worn.close()));
    }

    Value span(ToDoubleFunction<Hour> reading) {
        return Value.spanning(reading.applyAsDouble(middle), reading.applyAsDouble(open), reading.applyAsDouble(close));
    }
}
