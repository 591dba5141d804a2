package campcloth.fibre;

import java.util.Map;

/**
 * What was seen of one thread in a flame.
 *
 * @param thread which thread: {@code warp}, {@code weft}, {@code pile}
 * @param seen answer by feature, as {@code burn-test-answers.csv} has them; what was not looked for is left out, what
 *     nobody is sure of is {@link FlameAnswer#NOT_SURE}
 */
public record ThreadSeen(String thread, Map<FlameFeature, String> seen) {

    /** The name of a thread where only one was told. */
    public static final String ONLY = "thread";

    public ThreadSeen {
        seen = Map.copyOf(seen);
    }
}
