package campcloth.fibre.label;

/** What a word of the vocabulary does on a label. */
public enum WordKind {
    /** Names a fibre. */
    FIBRE,
    /** Trade or standard abbreviation of a fibre. */
    CODE,
    /** Generic name in the United States. */
    US_NAME,
    /** Fibres that the label leaves unnamed. */
    OTHER,
    /** Says that the composition is not known; needs no share. */
    UNKNOWN,
    /** Two fibres in one word, which only a ratio can share out. */
    PAIR,
    /** More than one reading: refused with all of them. */
    AMBIGUOUS,
    /** Says that something resembles a fibre, holds much of it, or is no textile fibre at all: refused. */
    IMITATION,
    /** Of one fibre only. */
    PURE,
    /** Percent, written out. */
    PERCENT,
    /** Part of the garment. */
    PART,
    /** How the fibre was grown, spun or finished; leaves the shares as they are and is noted. */
    MODIFIER,
    /** Fibre, yarn, cloth, or the name of a weave; adds nothing to the composition. */
    CLOTH,
    /** Stands before a composition and says that one follows. */
    HEADING,
    /** Remark about the whole label; noted. */
    REMARK,
    /** Joins shares or parts. */
    AND,
    /** Joins two names of one fibre. */
    OR,
    /** Ties a number to its fibre, as "of" does in many languages; adds nothing. */
    OF,
    /** Says in which language the label goes on. */
    LANGUAGE;

    /** Whether the word stands for one fibre that can carry a share. */
    public boolean namesOneFibre() {
        return this == FIBRE || this == CODE || this == US_NAME || this == OTHER || this == UNKNOWN;
    }

    /** Whether the word adds nothing to the composition wherever it stands, so that reading it so could hide a fibre. */
    boolean isNeutral() {
        return this == MODIFIER || this == CLOTH || this == REMARK;
    }

    /** The kind for people, as it stands before a meaning. */
    String inWords() {
        return switch (this) {
            case FIBRE, CODE, US_NAME, PAIR -> "fibre";
            case OTHER -> "other fibres";
            case UNKNOWN -> "unknown composition";
            case AMBIGUOUS -> "one of";
            case IMITATION -> "no name of a fibre";
            case PURE -> "the word 'pure'";
            case PERCENT -> "percent";
            case PART -> "part of the garment:";
            case MODIFIER -> "how the fibre was treated";
            case CLOTH -> "a name of a cloth";
            case HEADING -> "heading";
            case REMARK -> "remark";
            case AND -> "the word 'and'";
            case OR -> "the word 'or'";
            case OF -> "the word 'of'";
            case LANGUAGE -> "language mark";
        };
    }

    /** Whether the word is known only so that it can be refused with a reason. */
    public boolean isRefused() {
        return this == AMBIGUOUS || this == IMITATION;
    }
}
