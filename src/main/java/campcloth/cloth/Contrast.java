package campcloth.cloth;

/** Whether cloths differ in a figure, as far as its intervals tell. */
public enum Contrast {
    /** The intervals of at least two of them do not meet. */
    CLEAR,
    /** All intervals meet: the cloths may be the same in it. */
    WITHIN_ERROR,
    /** Fewer than two of them have the figure. */
    UNKNOWN
}
