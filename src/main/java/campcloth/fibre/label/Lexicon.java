package campcloth.fibre.label;

import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The words of all languages together, found by their folded form. A word that means one thing in one file and another in the
 * next is a fault: such a word must stand as AMBIGUOUS in both.
 */
public final class Lexicon {

    private static final List<String> COLUMNS = List.of("word", "kind", "means", "source", "note");

    private final Map<String, Entry> byWord = new HashMap<>();
    private final Map<String, String> fileOf = new HashMap<>();
    private int mostWords = 1;

    /** A phrase found in the tokens; {@code next} is the token after it. */
    record Match(Entry entry, int next) {}

    /** Reads one file of words; what is wrong in it goes to the faults given and the rest is kept. */
    public void read(String file, Reader text, Fibres fibres, List<Fault> faults) throws IOException {
        ReferenceTable.read(file, text, COLUMNS, faults).map(row -> {
            WordKind kind = row.word("kind", WordKind.class);
            List<String> means = row.optionalText("means").stream()
                    .flatMap(m -> Arrays.stream(m.split(";")))
                    .map(String::trim)
                    .filter(m -> !m.isEmpty())
                    .toList();
            row.text("source");
            Entry entry = new Entry(
                    row.text("word"),
                    kind,
                    means,
                    fibres(kind, means, fibres),
                    row.optionalText("note").orElse(""));
            add(file, entry);
            return entry;
        });
    }

    public int size() {
        return byWord.size();
    }

    /** The words, in all languages, that name a fibre and nothing else; codes are none. */
    public List<String> names(Fibre fibre) {
        return byWord.values().stream()
                .filter(entry -> (entry.kind() == WordKind.FIBRE || entry.kind() == WordKind.US_NAME)
                        && entry.fibres().contains(fibre))
                .map(Entry::word)
                .sorted()
                .toList();
    }

    Optional<Match> longest(List<Token> tokens, int at) {
        StringBuilder phrase = new StringBuilder();
        Optional<Match> longest = Optional.empty();
        boolean stroke = false;
        int next = at;
        for (int words = 1; words <= mostWords; words++) {
            stroke |= words > 1 && next < tokens.size() && tokens.get(next).isSign("/");
            int word = words == 1 ? at : afterJoint(tokens, next);
            if (word >= tokens.size() || !tokens.get(word).isWord()) {
                break;
            }
            phrase.append(words == 1 ? "" : " ")
                    .append(Tokens.folded(tokens.get(word).text()));
            next = word + 1;
            Entry entry = byWord.get(phrase.toString());
            if (entry != null && (!stroke || entry.kind() == WordKind.PAIR)) {
                longest = Optional.of(new Match(entry, next));
            }
        }
        return longest;
    }

    /** The words of a phrase may be joined by a hyphen or broken over lines; those of a pair also by a stroke. */
    private static int afterJoint(List<Token> tokens, int at) {
        int after = at;
        if (after < tokens.size()
                && (tokens.get(after).isSign("-") || tokens.get(after).isSign("/"))) {
            after++;
        }
        while (after < tokens.size() && tokens.get(after).isSign("\n")) {
            after++;
        }
        return after;
    }

    private void add(String file, Entry entry) {
        String folded = Tokens.folded(entry.word());
        Entry before = byWord.get(folded);
        if (before != null && (file.equals(fileOf.get(folded)) || !before.agreesWith(entry))) {
            throw Refused.of(
                    "word",
                    "'" + entry.word() + "' stands already in " + fileOf.get(folded) + " as " + before.kind() + " "
                            + before.means(),
                    "keep one row a word; where it truly has two meanings, make it AMBIGUOUS in every file");
        }
        byWord.put(folded, entry);
        fileOf.put(folded, file);
        mostWords = Math.max(mostWords, folded.split(" ").length);
    }

    private static List<Fibre> fibres(WordKind kind, List<String> means, Fibres fibres) {
        int needed = kind.namesOneFibre() || kind == WordKind.PART ? 1 : kind == WordKind.PAIR ? 2 : means.size();
        if (means.size() != needed || (kind == WordKind.AMBIGUOUS && means.size() < 2)) {
            throw Refused.of(
                    "means",
                    kind + " cannot have " + means.size() + " meanings",
                    "give one fibre key for a fibre, two for a PAIR, one name for a PART, two or more readings for "
                            + "AMBIGUOUS, with semicolons between");
        }
        if (!kind.namesOneFibre() && kind != WordKind.PAIR) {
            return List.of();
        }
        return means.stream().map(key -> fibre(key, fibres)).toList();
    }

    private static Fibre fibre(String key, Fibres fibres) {
        return fibres.named(key)
                .orElseThrow(() -> Refused.of(
                        "means",
                        "'" + key + "' is not in the fibre table",
                        "use a key of fibres.csv, or 'other' with a note"));
    }
}
