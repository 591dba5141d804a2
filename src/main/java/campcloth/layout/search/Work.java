package campcloth.layout.search;

/**
 * The steps a search may take. A step is one comparison of a spot with the box of a no-fit polygon; other work is paid at
 * its price in such steps. The clock only stops a search at twice its seconds, or two seconds over them where that is later;
 * whoever looks on may end it, too.
 */
final class Work {

    private static final double STEPS_PER_SECOND = 150e6;

    /** Seconds the clock allows for each of the search; a benchmark on a loaded machine may raise it. */
    private static final int CLOCK_FACTOR = Integer.getInteger("campcloth.layout.clockFactor", 1);

    private final long steps;
    private final long stopNanos;
    private final Watch watch;
    private long spent;
    private double least = Double.POSITIVE_INFINITY;

    Work(double seconds) {
        this(seconds, Watch.NONE);
    }

    Work(double seconds, Watch watch) {
        this.watch = watch;
        this.steps = (long) (seconds * STEPS_PER_SECOND);
        this.stopNanos = System.nanoTime() + (long) (1e9 * CLOCK_FACTOR * Math.max(2 * seconds, seconds + 2));
    }

    void spend(long some) {
        spent += some;
    }

    boolean isDone() {
        return spent >= steps || System.nanoTime() - stopNanos > 0 || watch.isStopped();
    }

    /** Tells whoever looks on of a length in cm, where it is the least so far. */
    void found(double length) {
        if (length < least) {
            least = length;
            watch.better(length);
        }
    }

    /** What the steps spent come to on an ordinary machine. */
    double spentSeconds() {
        return spent / STEPS_PER_SECOND;
    }

    /** Part of the steps spent, 0 to 1. */
    double spentPart() {
        return Math.min(1, (double) spent / steps);
    }
}
