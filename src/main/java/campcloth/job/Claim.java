package campcloth.job;

import campcloth.access.Asker;
import java.util.UUID;

/**
 * A job that one worker has.
 *
 * @param token tells this claim from those before and after
 * @param attempt the number of this beginning, counted from 1
 * @param asker for whom the work is done
 */
public record Claim(UUID id, UUID token, JobKind kind, int attempt, Asker asker, String request) {}
