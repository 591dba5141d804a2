package campcloth.garment;

import campcloth.figure.Range;

/**
 * A choice that a design leaves open.
 *
 * @param key name of the option
 * @param words what it does
 * @param value what is taken where nothing is chosen, and which values there are
 */
public record Option(String key, String words, Value value) {

    /** The values of an option. */
    public sealed interface Value permits YesNo, Cm {}

    /** Yes or no. */
    public record YesNo(boolean usual) implements Value {}

    /** A length. */
    public record Cm(double usualCm, Range range) implements Value {}

    public static Option yesNo(String key, boolean usual, String words) {
        return new Option(key, words, new YesNo(usual));
    }

    public static Option cm(String key, double usualCm, double leastCm, double mostCm, String words) {
        return new Option(key, words, new Cm(usualCm, new Range(key, leastCm, mostCm, "cm")));
    }
}
