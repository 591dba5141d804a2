package campcloth.fibre.label;

import campcloth.fibre.Fibre;
import java.util.List;

/**
 * One row of the vocabulary.
 *
 * @param word word or words as written in the table
 * @param kind what it does on a label
 * @param means fibre keys, name of the part, or readings to choose from
 * @param fibres the fibres it names: one for a fibre, two for a pair, else none
 * @param note what a reader of the label should know; empty where there is nothing to say
 */
public record Entry(String word, WordKind kind, List<String> means, List<Fibre> fibres, String note) {

    public Entry {
        means = List.copyOf(means);
        fibres = List.copyOf(fibres);
    }

    /** Whether two rows say the same, so that either may stand for the other. */
    boolean agreesWith(Entry other) {
        return kind == other.kind && means.equals(other.means);
    }
}
