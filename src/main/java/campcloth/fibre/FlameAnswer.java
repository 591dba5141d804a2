package campcloth.fibre;

/**
 * One of the things that may be seen of a feature.
 *
 * @param feature what was looked for
 * @param key short name, one of a kind within the feature
 * @param words what is seen, a sentence
 * @param melting whether it shows that the thread melts, whatever else was seen
 */
public record FlameAnswer(FlameFeature feature, String key, String words, boolean melting) {

    /** What is told of a feature that was looked for in vain: no evidence, and it is not asked again. */
    public static final String NOT_SURE = "not-sure";

    /** As sentences name it: {@code residue hard-bead}. */
    public String title() {
        return feature.key() + " " + key;
    }
}
