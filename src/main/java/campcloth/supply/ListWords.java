package campcloth.supply;

import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.Reader;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The words of suppliers' lists, {@code list-columns.csv}: header words with the column they name (and the unit, where the word says
 * it), and words in cells with what they mean. Case, accents and the space between words make no difference.
 */
public final class ListWords {

    private static final String FILE = "list-columns.csv";
    private static final List<String> COLUMNS = List.of("word", "kind", "means", "unit", "language", "source");

    /** What a word stands for. */
    enum Kind {
        HEADER,
        WEAVE,
        SURFACE,
        FINISH,
        NAP,
        STRETCH
    }

    /** A column, and the unit where the header word carries it. */
    record Named(Column column, Optional<Unit> unit) {}

    private final Map<String, Named> headers = new HashMap<>();
    private final Map<Kind, Map<String, String>> meanings = new HashMap<>();

    private ListWords() {}

    /**
     * Reads the table; what is wrong in it goes to the faults given and the rest is kept.
     *
     * @throws IOException where the file cannot be read at all
     */
    public static ListWords read(Reader text, List<Fault> faults) throws IOException {
        ListWords words = new ListWords();
        ReferenceTable.read(FILE, text, COLUMNS, faults).map(row -> {
            words.keep(row);
            return row;
        });
        for (Column needed : List.of(Column.KEY, Column.NAME, Column.COMPOSITION)) {
            if (words.headers.values().stream().noneMatch(named -> named.column() == needed)) {
                faults.add(new Fault(FILE, 1, "means", "no header word names " + needed, "add one"));
            }
        }
        return words;
    }

    private void keep(ReferenceTable.Row row) {
        Kind kind = row.word("kind", Kind.class);
        String word = plain(row.text("word"));
        if (kind == Kind.HEADER) {
            Column column = row.word("means", Column.class);
            Optional<Unit> unit = row.optionalText("unit").map(name -> row.word("unit", Unit.class));
            if (unit.isPresent()
                    && column.property().filter(unit.get()::measures).isEmpty()) {
                throw Refused.of("unit", unit.get() + " does not measure " + column, "give a unit of that figure");
            }
            once(headers.put(word, new Named(column, unit)), word);
        } else {
            check(kind, row.text("means"));
            once(meanings.computeIfAbsent(kind, any -> new HashMap<>()).put(word, row.text("means")), word);
        }
    }

    private static void once(@org.jspecify.annotations.Nullable Object before, String word) {
        if (before != null) {
            throw Refused.of("word", "'" + word + "' stands twice", "keep one row a word");
        }
    }

    private static void check(Kind kind, String means) {
        try {
            Meanings.check(kind, means);
        } catch (IllegalArgumentException none) {
            throw Refused.of("means", "'" + means + "' is no " + kind, "write one of those that the program knows");
        }
    }

    Optional<Named> header(String words) {
        return Optional.ofNullable(headers.get(plain(words)));
    }

    /** What a word in a cell means, by the name of its constant. */
    Optional<String> meaning(Kind kind, String word) {
        return Optional.ofNullable(meanings.getOrDefault(kind, Map.of()).get(plain(word)));
    }

    /** How many words are known. */
    public int size() {
        return headers.size() + meanings.values().stream().mapToInt(Map::size).sum();
    }

    /** Lower case, no accents, single spaces between runs of letters and digits. */
    static String plain(String words) {
        return Normalizer.normalize(words, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
