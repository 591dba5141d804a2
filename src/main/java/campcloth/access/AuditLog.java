package campcloth.access;

/** Keeps what was done by virtue of a role, or to make private things public or the other way round. */
public interface AuditLog {

    /**
     * Notes that the present asker did something.
     *
     * @param action in a word or two, such as {@code shared}
     * @param thingKind what kind of thing it was done to
     * @param thingId which
     * @param what more about it; nothing private
     */
    void note(String action, String thingKind, String thingId, String what);
}
