package campcloth.fire;

/** The hazard of a cloth in an exposure, from least to worst; each grade is one quarter of the hazard from 0 to 100. */
public enum FireGrade {
    /** No concern beyond what holds for any clothing. */
    LOW,
    /** Take care. */
    RAISED,
    /** Change something. */
    HIGH,
    /** Do not wear it there. */
    SEVERE;

    static FireGrade ofLevel(int level) {
        return values()[level];
    }
}
