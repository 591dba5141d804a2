package campcloth.fire;

/** The hazard of a cloth in an exposure, from least to worst; each grade is one quarter of the hazard from 0 to 100. */
public enum FireGrade {
    /** No concern beyond what holds for any clothing. */
    LOW("no special concern"),
    /** Take care. */
    RAISED("take care"),
    /** Change something. */
    HIGH("change something"),
    /** Do not wear it there. */
    SEVERE("not for this");

    private final String words;

    FireGrade(String words) {
        this.words = words;
    }

    /** For sentences, where "raised" could be taken for the face of the cloth. */
    public String words() {
        return words;
    }

    static FireGrade ofLevel(int level) {
        return values()[level];
    }
}
