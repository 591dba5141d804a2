package campcloth.cloth;

/** How a garment hangs: a loose one draws air under it and reaches further. */
public enum Fit {
    CLOSE,
    LOOSE
}
