package campcloth.fibre.label;

import campcloth.fibre.Fibre;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What a word means in the languages that agree about it.
 *
 * @param word word or words as written in the table
 * @param kind what it does on a label
 * @param means fibre keys, name of the part, or readings to choose from
 * @param fibres the fibres it names: one for a fibre, two for a pair, else none
 * @param note what a reader of the label should know; empty where there is nothing to say
 * @param languages ISO 639-1 keys of the languages that mean it so; none where it stands on labels of any language
 */
public record Entry(
        String word, WordKind kind, List<String> means, List<Fibre> fibres, String note, SortedSet<String> languages) {

    public Entry {
        means = List.copyOf(means);
        fibres = List.copyOf(fibres);
        languages = Collections.unmodifiableSortedSet(new TreeSet<>(languages));
    }

    /** Whether two rows say the same, so that either may stand for the other. */
    boolean agreesWith(Entry other) {
        return kind == other.kind && means.equals(other.means);
    }

    /** Whether the word belongs to no language. */
    boolean isOfAllLanguages() {
        return languages.isEmpty();
    }

    /** The meaning for people. */
    String meaning() {
        if (!fibres.isEmpty()) {
            return fibres.stream().map(Fibre::name).collect(Collectors.joining(" and "));
        }
        return means.isEmpty() ? kind.inWords() : kind.inWords() + " " + String.join(" or ", means);
    }

    /** The meaning with the languages that have it, for people: {@code flax (Italian 'lino')}. */
    String reading() {
        String where = isOfAllLanguages()
                ? "abbreviation or trade name"
                : languages.stream().map(Entry::languageName).collect(Collectors.joining(", "));
        return meaning() + " (" + where + " '" + word + "')";
    }

    static String languageName(String key) {
        return Locale.forLanguageTag(key).getDisplayLanguage(Locale.ENGLISH);
    }

    /** Order in which meanings are told, whatever the order of the files: by language, those of all languages last. */
    String rank() {
        return (isOfAllLanguages() ? "~" : languages.first()) + kind + means;
    }

    /** This meaning, also held by what a row that agrees adds. */
    Entry with(Entry agreeing) {
        SortedSet<String> both = new TreeSet<>(languages);
        both.addAll(agreeing.languages);
        boolean noteIsFirst = !note.isEmpty() && (agreeing.note.isEmpty() || note.compareTo(agreeing.note) <= 0);
        return new Entry(
                word.compareTo(agreeing.word) <= 0 ? word : agreeing.word,
                kind,
                means,
                fibres,
                noteIsFirst ? note : agreeing.note,
                isOfAllLanguages() || agreeing.isOfAllLanguages() ? new TreeSet<>() : both);
    }
}
