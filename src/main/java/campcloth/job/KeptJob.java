package campcloth.job;

import java.util.Optional;

/**
 * A job with what was asked and what came of it, both as the room wrote them that knows the work.
 *
 * @param isPayloadKept whether the bytes that were handed in beside are still here
 */
public record KeptJob(Job job, String request, Optional<String> result, boolean isPayloadKept) {}
