package campcloth.access;

/** Somebody else took the work over while it was done here; what was to be written last is not written. */
public final class TakenOver extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public TakenOver() {
        super("taken over", null, false, false);
    }
}
