package campcloth.job;

import campcloth.access.Holding;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/**
 * Work that was handed in, and where it stands.
 *
 * @param progress how far it has come: numbers by name, each with its unit in the name
 * @param attempts how often it was begun
 * @param cancelAsked whether somebody asked for its end while it ran
 * @param startedAt when it was begun the first time
 * @param failure why it came to nothing, where it did
 */
public record Job(
        UUID id,
        JobKind kind,
        JobState state,
        Map<String, Double> progress,
        int attempts,
        boolean cancelAsked,
        Instant madeAt,
        Optional<Instant> startedAt,
        Optional<Instant> endedAt,
        Holding holding,
        Optional<Failure> failure) {

    /** How often a job is begun before it is given up. */
    public static final int MOST_ATTEMPTS = 3;

    public Job {
        progress = Map.copyOf(progress);
    }
}
