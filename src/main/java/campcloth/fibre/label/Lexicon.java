package campcloth.fibre.label;

import campcloth.fibre.Fibre;
import campcloth.fibre.Fibres;
import campcloth.figure.Fault;
import campcloth.figure.ReferenceTable;
import campcloth.figure.Refused;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of all languages together, found by their folded form. Each file is a language and bears its ISO 639-1 key; the
 * words of a file with a longer name stand on labels of any language. A word may mean different things in different files;
 * twice in one file is a fault.
 */
public final class Lexicon {

    private static final List<String> COLUMNS = List.of("word", "kind", "means", "source", "note");

    private static final Pattern LANGUAGE = Pattern.compile("(?:.*/)?([a-z]{2})\\.csv");

    private final Map<String, List<Entry>> byWord = new HashMap<>();
    private final SortedSet<String> languages = new TreeSet<>();
    private int mostWords = 1;

    /** A phrase found in the tokens, with all that it may mean; {@code next} is the token after it. */
    record Match(String phrase, List<Entry> entries, int next) {

        boolean mayBe(WordKind kind) {
            return entries.stream().anyMatch(e -> e.kind() == kind);
        }
    }

    /** Reads one file of words; what is wrong in it goes to the faults given and the rest is kept. */
    public void read(String file, Reader text, Fibres fibres, List<Fault> faults) throws IOException {
        SortedSet<String> ofFile = languages(file);
        languages.addAll(ofFile);
        Set<String> inThisFile = new HashSet<>();
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
                    row.optionalText("note").orElse(""),
                    ofFile);
            if (!inThisFile.add(Tokens.folded(entry.word()))) {
                throw Refused.of("word", "'" + entry.word() + "' stands twice in " + file, "keep one row a word");
            }
            add(entry);
            return entry;
        });
    }

    private static SortedSet<String> languages(String file) {
        Matcher language = LANGUAGE.matcher(file);
        return language.matches() ? new TreeSet<>(Set.of(language.group(1))) : new TreeSet<>();
    }

    public int size() {
        return byWord.size();
    }

    /** ISO 639-1 keys of the languages that have words. */
    public SortedSet<String> languages() {
        return Collections.unmodifiableSortedSet(languages);
    }

    /** What a single word means; nothing where it is not known. */
    List<Entry> meanings(String word) {
        return byWord.getOrDefault(Tokens.folded(word), List.of());
    }

    /** The words, in all languages, that name a fibre and nothing else; codes are none. */
    public List<String> names(Fibre fibre) {
        return byWord.values().stream()
                .flatMap(List::stream)
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
            Match match = new Match(phrase.toString(), byWord.getOrDefault(phrase.toString(), List.of()), next);
            if (!match.entries().isEmpty() && (!stroke || match.mayBe(WordKind.PAIR))) {
                longest = Optional.of(match);
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

    private void add(Entry entry) {
        String folded = Tokens.folded(entry.word());
        List<Entry> known = new ArrayList<>(byWord.getOrDefault(folded, List.of()));
        Entry whole = entry;
        for (Entry meaning : byWord.getOrDefault(folded, List.of())) {
            if (meaning.agreesWith(entry)) {
                known.remove(meaning);
                whole = meaning.with(entry);
            }
        }
        known.add(whole);
        known.sort(Comparator.comparing(Entry::rank));
        byWord.put(folded, List.copyOf(known));
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
