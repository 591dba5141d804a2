package campcloth.cloth;

/** Whether fibre ends stand out of the face: pile, nap and brushing feed a surface flash. */
public enum Surface {
    PLAIN,
    RAISED
}
