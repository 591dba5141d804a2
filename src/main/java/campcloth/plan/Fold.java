package campcloth.plan;

/** How the cloth may lie while it is cut. */
public enum Fold {
    /** Whichever takes less cloth; folded where that costs nothing, since it is easier to chalk. */
    ANY,
    /** Open, in one layer. */
    NONE,
    /** Folded once along its length, selvedge on selvedge. */
    ONE,
    /** Folded twice along its length, both selvedges inwards. */
    TWO
}
