package campcloth.access;

import java.util.UUID;

/**
 * Calls that carry a key, remembered for a day, so that one that is sent again makes nothing twice: neither where the first was
 * answered, nor where it was cut short after it made what it should ({@link NewIds}). Each method is one unit of work, done when it
 * returns.
 */
public interface KeyedCalls {

    /** Begins a call, or tells why not. */
    Start begin(KeyedCall call);

    /** The call made what it should, and was answered so. */
    void answered(KeyedCall call, UUID seed, CallAnswer answer);

    /** The call ended in between: sent again, it goes on from the same seed. */
    void leave(KeyedCall call, UUID seed);

    /** The call made nothing; its key is as though it had never been sent. */
    void forget(KeyedCall call, UUID seed);

    /** How a call begins. */
    sealed interface Start {

        /** It is to be worked on; what it makes has ids that follow from the seed. */
        record First(UUID seed) implements Start {}

        /** It was answered before. */
        record Answered(CallAnswer answer) implements Start {}

        /** It is being worked on. */
        record Running() implements Start {}

        /** Something else was sent with its key. */
        record Other() implements Start {}
    }
}
