package campcloth.job;

/** All places for what takes long are taken. */
public final class Busy extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String what;

    /**
     * @param what of what there are too many at once, in the plural
     * @param message the same in a sentence, with what helps
     */
    Busy(String what, String message) {
        super(message);
        this.what = what;
    }

    public String what() {
        return what;
    }
}
