package campcloth.cloth;

import campcloth.figure.Range;
import campcloth.figure.Words;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How a piece was washed and dried, as far as it was told. Ways of drying are those that ISO 6330 lists as A to F.
 *
 * @param temperatureC of the water, 5 to 95 C
 * @param method how it was moved
 * @param drying how it was dried
 */
public record Washing(Optional<Double> temperatureC, Optional<Method> method, Optional<Drying> drying) {

    /** How the cloth was moved in the water. */
    public enum Method {
        BY_HAND,
        GENTLE_MACHINE,
        MACHINE,
        SOAKED,
        STEAMED
    }

    /** How it was dried; the letters of ISO 6330. */
    public enum Drying {
        /** A. */
        LINE,
        /** B. */
        DRIP_LINE,
        /** C. */
        FLAT,
        /** D. */
        DRIP_FLAT,
        /** E. */
        FLAT_PRESS,
        /** F. */
        TUMBLE
    }

    private static final Range TEMPERATURE = new Range("temperatureC", 5, 95, "C");

    public Washing {
        temperatureC.ifPresent(TEMPERATURE::check);
    }

    /** As "40 C, machine, dried line"; empty where nothing was told. */
    public String words() {
        return Stream.of(
                        temperatureC.map(c -> Words.number(c) + " C"),
                        method.map(Washing::word),
                        drying.map(way -> "dried " + word(way)))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
