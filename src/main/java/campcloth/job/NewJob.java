package campcloth.job;

import java.util.Optional;

/**
 * What is handed in.
 *
 * @param request what is asked, as the room wrote it that does the work
 * @param payload bytes beside it
 * @param keepsPayload whether the bytes stay for a while when the work is done, to be worked on once more
 */
public record NewJob(JobKind kind, String request, Optional<Payload> payload, boolean keepsPayload) {

    public static NewJob of(JobKind kind, String request) {
        return new NewJob(kind, request, Optional.empty(), false);
    }
}
