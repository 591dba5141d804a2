package campcloth.access;

import java.util.UUID;

/**
 * Work that may have to be done again, in the hands of whoever does it now.
 *
 * @param seed the same each time; the ids of what is made follow from it
 * @param claim tells this time from those before and after
 */
public record Turn(Of of, UUID seed, UUID claim) {

    /** What is worked on. */
    public enum Of {
        /** A call with a key. */
        CALL,
        /** A job; its id is the seed. */
        JOB
    }
}
