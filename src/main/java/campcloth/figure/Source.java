package campcloth.figure;

/**
 * Where figures come from.
 *
 * @param id short name by which figures cite it
 * @param kind what sort of source it is
 * @param citation who published it, its title, number or year
 * @param evidence how the figures were taken from it
 * @param note what to bear in mind, may be empty
 */
public record Source(String id, Kind kind, String citation, Evidence evidence, String note) {

    /** Sorts of source. */
    public enum Kind {
        STANDARD,
        REGULATION,
        PAPER,
        HANDBOOK,
        PUBLIC_BODY,
        /** What the trade does; no publication stands behind it. */
        COMMON_PRACTICE,
        /** Follows by arithmetic from definitions or other sources. */
        DERIVED,
        /** A choice of this project, stated as such. */
        PROJECT
    }

    /** How far the text itself was seen. */
    public enum Evidence {
        /** The text, or its abstract, was read. */
        READ,
        /** Seen only as quoted by somebody else. */
        SECOND_HAND,
        /** Remembered from the literature and not looked up again. */
        MEMORY,
        /** Worked out here. */
        COMPUTED,
        /** Decided here. */
        CHOSEN
    }
}
