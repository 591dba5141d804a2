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
        /** Something that melts lies against the skin. */
        MELT_ON_SKIN,
        /** Plant fibre of one layer, lining or thread holds the melt of another in the flame. */
        SCAFFOLD,
        /** The seams or the trim melt. */
        THREAD,
        /** Something worn or sewn in is graded worse than the cloth. */
        OUTFIT,
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
