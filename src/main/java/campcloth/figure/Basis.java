package campcloth.figure;

/** How a figure came to be known, strongest first. */
public enum Basis {
    /** Measured on this very cloth. */
    MEASURED,
    /** Stated by whoever sells or labels it. */
    DECLARED,
    /** Usual for cloth of this description, from a published or marked source. */
    TYPICAL,
    /** Computed from other properties of the cloth, with a wide interval. */
    ESTIMATED;

    /** Whether a figure of this basis takes precedence over one of the other. */
    public boolean beats(Basis other) {
        return compareTo(other) < 0;
    }
}
