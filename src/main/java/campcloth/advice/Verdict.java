package campcloth.advice;

/** What comes before any score, best first. */
public enum Verdict {
    SUITABLE,
    /** Wearable if the warnings are heeded. */
    CAUTION,
    /** Not for this event; no score changes that. */
    RULED_OUT
}
