package campcloth.door;

/** The service may not start as it is set up: one sentence says why, one says the way out. */
final class NotStarted extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String because;
    private final String remedy;

    NotStarted(String because, String remedy) {
        super(because + " " + remedy);
        this.because = because;
        this.remedy = remedy;
    }

    String because() {
        return because;
    }

    String remedy() {
        return remedy;
    }
}
