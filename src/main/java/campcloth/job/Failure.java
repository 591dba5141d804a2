package campcloth.job;

import campcloth.figure.Refusal;
import java.util.List;

/**
 * Why a job came to nothing.
 *
 * @param reason as a sentence
 * @param refusals what of that which was handed in cannot be used; empty where that is not the reason
 */
public record Failure(String reason, List<Refusal> refusals) {

    public Failure {
        refusals = List.copyOf(refusals);
    }
}
