package campcloth.errand;

/**
 * Something that is not known yet and matters.
 *
 * @param about what it is about
 * @param question what to find out, and from whom
 * @param because why it matters, and what was taken meanwhile
 */
public record OpenQuestion(About about, String question, String because) {

    /** What a question is about, in the order in which to ask. */
    public enum About {
        /** An authority without a rule on file. */
        AUTHORITY,
        /** A rule that only a person can judge, or rules that no cloth keeps all of. */
        RULE,
        /** Weather, work and fires. */
        EVENT,
        /** Figures of the cloth that are only estimated. */
        CLOTH,
        /** Measurements that were not taken. */
        WEARER
    }
}
