package campcloth.fibre;

import campcloth.fibre.label.Lexicon;
import campcloth.figure.Fault;
import java.io.IOException;
import java.io.Reader;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * The words that stand on fibre-content labels, one table a language: columns {@code word, kind, means, source, note}. A
 * language is added by a further table; the grammar stays as it is.
 */
public final class LabelVocabulary {

    private final Lexicon lexicon;

    private LabelVocabulary(Lexicon lexicon) {
        this.lexicon = lexicon;
    }

    /**
     * Reads all tables, in the order of their names; what is wrong in them goes to the faults given and the rest is kept. A
     * fibre that is not in the fibre table is a fault, as is a word that two tables understand differently.
     *
     * @throws IOException where a table cannot be read at all
     */
    public static LabelVocabulary read(Map<String, ? extends Reader> tables, Fibres fibres, List<Fault> faults)
            throws IOException {
        Lexicon lexicon = new Lexicon();
        for (Map.Entry<String, ? extends Reader> table : new TreeMap<>(tables).entrySet()) {
            lexicon.read(table.getKey(), table.getValue(), fibres, faults);
        }
        return new LabelVocabulary(lexicon);
    }

    /** How many words and phrases are known. */
    public int size() {
        return lexicon.size();
    }

    /** ISO 639-1 keys of the languages that labels are read in. */
    public SortedSet<String> languages() {
        return lexicon.languages();
    }

    /** How labels call a fibre, in all languages known. */
    public List<String> names(Fibre fibre) {
        return lexicon.names(fibre);
    }

    Lexicon lexicon() {
        return lexicon;
    }
}
