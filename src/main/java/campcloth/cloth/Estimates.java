package campcloth.cloth;

/** Estimates for the figures that nobody measured. */
public final class Estimates {}
