package campcloth.access;

/** The asker may see a thing but not do with it what was asked. */
public final class NotAllowed extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** @param remedy what would help, as a sentence for the asker */
    public NotAllowed(String remedy) {
        super(remedy);
    }
}
