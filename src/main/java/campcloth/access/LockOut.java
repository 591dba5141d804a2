package campcloth.access;

import java.time.Duration;

/**
 * How long nobody gets in after wrong passwords in a row. It begins with the tenth and doubles up to a bound. Whoever goes on trying can
 * use up each wait's end, so the owner is kept apart by {@link Tried}. NIST SP 800-63B-4, section 3.2.2, wants no more than 100 wrong ones in a row and names waits that grow, 30 seconds
 * to an hour, as a way (from memory); the tenth, the first wait and the bound are project choices.
 */
public final class LockOut {

    public static final int FREE = 10;
    public static final Duration FIRST = Duration.ofSeconds(30);
    public static final Duration LONGEST = Duration.ofMinutes(15);

    /** After that long without a wrong one the count begins anew. */
    public static final Duration FORGOTTEN = Duration.ofDays(1);

    private LockOut() {}

    /** @param wrong how many in a row, the last one included */
    public static Duration after(int wrong) {
        if (wrong < FREE) {
            return Duration.ZERO;
        }
        int doublings = Math.min(wrong - FREE, Long.SIZE / 4);
        Duration wait = FIRST.multipliedBy(1L << doublings);
        return wait.compareTo(LONGEST) > 0 ? LONGEST : wait;
    }
}
