package campcloth.layout;

/** All places for what takes long are taken. */
public final class Busy extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Busy() {
        super(
                "As many layouts are being searched as this machine can. Try again in a few seconds, or ask for fewer seconds.");
    }
}
