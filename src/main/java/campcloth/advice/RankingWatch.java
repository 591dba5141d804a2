package campcloth.advice;

import java.time.Duration;

/** Hears of each ranking, so that whoever keeps the service up sees how long people wait. */
@FunctionalInterface
public interface RankingWatch {

    /** Cloths were ranked. */
    void ranked(int cloths, Duration took);
}
