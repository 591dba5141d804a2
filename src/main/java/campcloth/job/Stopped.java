package campcloth.job;

/** Work ended before its end because it was asked to, and has written nothing. */
public final class Stopped extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public Stopped() {
        super("stopped", null, false, false);
    }
}
