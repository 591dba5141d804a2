package campcloth.pages;

/** What an address names is not there, or not any more. */
public final class NotHere extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** @param what the thing in one word, such as {@code event} */
    public NotHere(String what) {
        super("there is no such " + what);
    }
}
