package campcloth.layout.search;

/** Lifts the clock's stop of a search, for measurements on a machine that does other work beside. */
public final class Clock {

    private Clock() {}

    /** To be called before the first search. */
    public static void lift() {
        System.setProperty("campcloth.layout.clockFactor", "100");
    }
}
