package campcloth.demo;

/**
 * Something that the demo put in.
 *
 * @param kind what it is
 * @param id how it is, or was, named in addresses
 * @param name its name when it was put in
 * @param standing what became of it
 */
public record DemoThing(Kind kind, String id, String name, Standing standing) {

    /** What the demo puts in. */
    public enum Kind {
        EVENT,
        CLOTH
    }

    /** What became of it. */
    public enum Standing {
        /** It is there as the demo put it in. */
        AS_PUT_IN,
        /** Somebody changed it since: it is theirs. */
        CHANGED,
        /** It is not there any more. */
        REMOVED
    }
}
