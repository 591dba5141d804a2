package campcloth.rest;

/** A change that does not say on which version it is made, or says an old one. */
final class Precondition extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final boolean stale;

    private Precondition(boolean stale, String message) {
        super(message);
        this.stale = stale;
    }

    static Precondition missing() {
        return new Precondition(false, "Say which version you change: send If-Match with the ETag that you read.");
    }

    static Precondition stale(long actualVersion) {
        return new Precondition(
                true,
                "Somebody changed it since you read it. Read it again (its ETag is now \"" + actualVersion
                        + "\") and make your change on that. Nothing was written.");
    }

    boolean isStale() {
        return stale;
    }
}
