package campcloth.advice;

/** One thing that makes a cloth better or worse for an event: computes a quantity and scores it. */
interface Criterion {

    /** Its name in answers. */
    String name();

    /** How much it counts at an event, before the weights of all criteria are brought to a sum of 1. Project choice. */
    double weight(Demands demands);

    Assessment assess(Facts facts);

    /** The score of {@link #assess} alone, without words, for those who ask it thousands of times. */
    double score(Facts facts);
}
