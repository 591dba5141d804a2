package campcloth.outage;

/** So many wait for the same already that another one would only wait in vain. */
public final class Crowded extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public Crowded(String message) {
        super(message);
    }
}
