package campcloth.job;

/** The gate of the searches for layouts. */
public final class LayoutGate extends Gate {

    public LayoutGate() {
        super(
                "layouts",
                "As many layouts are being searched as this machine can. Try again in a few seconds, or ask for fewer seconds.",
                PATIENCE);
    }
}
