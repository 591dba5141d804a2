package campcloth.advice;

/** One thing that makes a cloth better or worse for an event: computes a quantity and scores it. */
interface Criterion {

    /** Its name in answers. */
    String name();

    /** Its share of the whole score; the shares of all criteria sum to 1. Project choice. */
    double share();

    Assessment assess(Facts facts);
}
