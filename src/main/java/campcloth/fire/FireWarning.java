package campcloth.fire;

/**
 * Something to tell the wearer.
 *
 * @param code what it is about
 * @param severity how urgent it is
 * @param text what to say, in whole sentences
 */
public record FireWarning(Code code, Severity severity, String text) {

    /** What a warning is about. */
    public enum Code {
        MELT,
        SPREAD,
        LAYER,
        HEAT,
        LABEL,
        ASSUMED,
        RULE
    }

    /** How urgent, from least to most. */
    public enum Severity {
        NOTE,
        CAUTION,
        STOP
    }
}
