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
    public sealed interface Value permits YesNo, Cm, Count {}

    /** Yes or no. */
    public record YesNo(boolean usual) implements Value {}

    /** A length. */
    public record Cm(double usualCm, Range range) implements Value {}

    /** A whole number of things. */
    public record Count(int usual, Range range) implements Value {}

    public static Option yesNo(String key, boolean usual, String words) {
        return new Option(key, words, new YesNo(usual));
    }

    public static Option cm(String key, double usualCm, double leastCm, double mostCm, String words) {
        return new Option(key, words, new Cm(usualCm, new Range(key, leastCm, mostCm, "cm")));
    }

    public static Option count(String key, int usual, int least, int most, String words) {
        return new Option(key, words, new Count(usual, new Range(key, least, most, "in whole numbers")));
    }
}
