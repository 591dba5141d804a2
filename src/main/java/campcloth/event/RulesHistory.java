package campcloth.event;

import java.time.Instant;
import java.util.List;

/**
 * How the rules of an event came to be what they are.
 *
 * @param total how many versions are kept
 * @param versions the newest of them, newest first
 */
public record RulesHistory(long total, List<Version> versions) {

    public RulesHistory {
        versions = List.copyOf(versions);
    }

    /**
     * One version of an event.
     *
     * @param version which
     * @param keptAt when it was written
     * @param rules how many rules it has
     * @param changed whether they differ from those of the version before; the first version's always do
     */
    public record Version(long version, Instant keptAt, int rules, boolean changed) {}
}
