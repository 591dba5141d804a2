package campcloth.job;

import java.time.Duration;

/**
 * The gate of the rankings over the catalogue. Each takes all processors and, of a million cloths, some tens of megabytes for the time
 * that it takes.
 */
public final class RankingGate extends Gate {

    public RankingGate() {
        this(PATIENCE);
    }

    /** One that is waited before for so long, however slow the machine. */
    RankingGate(Duration patience) {
        super(
                "rankings",
                "As many rankings are being worked out as this machine can. Try again in a few seconds, or rank fewer cloths.",
                patience);
    }
}
