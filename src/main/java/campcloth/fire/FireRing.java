package campcloth.fire;

/**
 * A distance all round a fire.
 *
 * @param kind what is there
 * @param metres from the fire's centre, m; computed ones in full tenths, never nearer
 * @param words what it is, short
 * @param sentence the same in full, with where it is from
 */
public record FireRing(Kind kind, double metres, String words, String sentence) {

    /** What is there, in the order to tell. */
    public enum Kind {
        /** Within it flames can reach. */
        FLAMES,
        /** Within it only who works at the fire. */
        RING,
        /** Within it sparks land often. */
        SPARKS,
        /** Where the wearer is. */
        WEARER,
        /** The least distance for a cloth. */
        CLOTH,
        /** What a rule asks to keep. */
        RULE_KEEP,
        /** Within it a rule holds. */
        RULE_REACH
    }
}
