package campcloth.cloth;

import java.util.List;

/**
 * Drops of clean water let fall from 1 cm on the taut cloth, and how long each shone before only a dull wet spot was left; in
 * the manner of AATCC 79, which stops at a minute.
 *
 * @param seconds 1 to 12 times, 0.1 to 60 s; 60 where it still shone
 */
public record DripTest(List<Double> seconds) {

    public static final int MOST_DROPS = 12;
    public static final double STOPPED_AFTER_S = 60;

    private static final double AT_ONCE_S = 0.1;

    public DripTest {
        seconds = List.copyOf(seconds);
        WindTest.checkTimes("seconds", seconds, AT_ONCE_S, STOPPED_AFTER_S, MOST_DROPS);
    }
}
