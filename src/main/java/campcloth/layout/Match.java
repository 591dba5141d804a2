package campcloth.layout;

/**
 * A spot of a piece that meets the same place of the pattern's repeat as those of the other pieces of its group.
 *
 * @param at in the coordinates of the outline
 * @param group name of the group
 */
public record Match(Point at, String group) {

    /** Group of whoever names none. */
    public static final String USUAL = "pattern";
}
