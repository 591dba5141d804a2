package campcloth.access;

/**
 * Calls that carry a key, remembered for a day, so that one that is sent again makes nothing twice: neither where the first was
 * answered, nor where it was cut short after it made what it should ({@link NewIds}). Whoever begins a call has a claim on it until one
 * of the other methods ends that; where its instance goes away before, the next takes the call over, and what the one before still does
 * has no effect. Each method is one unit of work, done when it returns.
 */
public interface KeyedCalls {

    /** Begins a call, or tells why not. */
    Start begin(KeyedCall call);

    /** The call made what it should, and was answered so. */
    void answered(KeyedCall call, Turn turn, CallAnswer answer);

    /** The call ended in between: sent again, it goes on from the same seed. */
    void leave(KeyedCall call, Turn turn);

    /** The call made nothing; unless it was begun before and may have made something then, its key is as though it had never been sent. */
    void forget(KeyedCall call, Turn turn);

    /** How a call begins. */
    sealed interface Start {

        /** It is to be worked on. */
        record First(Turn turn) implements Start {}

        /** It was answered before. */
        record Answered(CallAnswer answer) implements Start {}

        /** It is being worked on. */
        record Running() implements Start {}

        /** Something else was sent with its key. */
        record Other() implements Start {}
    }
}
