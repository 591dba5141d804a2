package campcloth.layout.search;

/** Lifts the clock's stop of a search, for measurements on a machine that does other work beside. */
public final class Clock {

    private Clock() {}

    public static void lift() {
        Work.clockFactor = 100;
    }
}
