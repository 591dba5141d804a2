package campcloth.cloth;

/**
 * How a cloth takes a drop of water, by the median time. 5 s and 60 s are the bounds that AATCC 79 names: adequate absorbency,
 * and where the watch is stopped. An observation; no model uses it, and it is no test of rain.
 */
public enum Absorbency {
    /** Within 5 s. */
    ABSORBS("takes a drop up within 5 s"),
    /** Within a minute. */
    SLOW("takes a drop up within a minute"),
    /** Not within a minute. */
    REPELS("holds a drop off for a minute or longer; that says nothing of rain");

    private final String words;

    Absorbency(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
