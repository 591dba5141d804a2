package campcloth.comfort;

import campcloth.comfort.Reading.Value;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The worst quarter of an hour of a course, on the mean of its minutes; less than a quarter where a model holds no longer at a
 * stretch.
 *
 * @param fromMinute its first minute, counted from the begin of the event
 * @param minutes how many minutes it has
 * @param spell name of the spell in which its middle lies
 * @param beyond how far beyond comfort; negative where there is something to spare
 * @param measure what that is measured by
 */
public record QuarterHour(int fromMinute, int minutes, String spell, double beyond, Measure measure) {

    private static final int MINUTES = 15;

    /** What is measured, and how far a minute lies beyond comfort by it. */
    public enum Measure {
        SKIN("K of skin temperature", m -> m.felt().map(f -> f.coldSkinC() - f.skinC())),
        INSULATION(
                "clo under the minimal insulation",
                m -> m.felt().isPresent()
                        ? Optional.empty()
                        : m.dressed()
                                .minimalMarginClo()
                                .inRange()
                                .map(Value::value)
                                .map(margin -> -margin)),
        WETTEDNESS(
                "% of the skin wet beyond comfort",
                m -> m.felt().map(f -> 100 * (f.wettedness() - f.comfortableWettedness())));

        private final String unit;
        private final transient Function<Moment, Optional<Double>> beyond;

        Measure(String unit, Function<Moment, Optional<Double>> beyond) {
            this.unit = unit;
            this.beyond = beyond;
        }

        public String unit() {
            return unit;
        }
    }

    /** The worst; empty where that was measured nowhere. */
    static Optional<QuarterHour> worst(List<Moment> moments, Measure measure) {
        Optional<QuarterHour> worst = Optional.empty();
        double sum = 0;
        double[] window = new double[MINUTES];
        int length = 0;
        for (int i = 0; i < moments.size(); i++) {
            Moment moment = moments.get(i);
            Optional<Double> beyond = measure.beyond.apply(moment);
            if (beyond.isEmpty()) {
                length = 0;
                sum = 0;
                continue;
            }
            int place = moment.minute() % MINUTES;
            sum += beyond.get() - (length >= MINUTES ? window[place] : 0);
            window[place] = beyond.get();
            length++;
            int taken = Math.min(MINUTES, length);
            double mean = sum / taken;
            boolean longer = worst.filter(w -> w.minutes >= taken).isEmpty();
            if (longer
                    || taken == MINUTES && worst.filter(w -> w.beyond >= mean).isEmpty()) {
                worst = Optional.of(new QuarterHour(
                        moment.minute() - taken, taken, name(moments.get(i - taken / 2)), mean, measure));
            }
        }
        return worst;
    }

    private static String name(Moment moment) {
        return moment.dressed().stretch().needs().spell().name();
    }
}
