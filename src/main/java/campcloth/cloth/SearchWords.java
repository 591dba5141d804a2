package campcloth.cloth;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The words of a text as a search compares them: letters and digits in lower case, without accents, letters that are written as two
 * elsewhere as those two. Everything between them only parts words, so that nothing in a text can be taken for a command.
 */
public final class SearchWords {

    /** Longer words are cut, what stands after so many words is left out. */
    private static final int LONGEST_WORD = 60;

    private static final int MOST_WORDS = 1000;

    private static final Map<Integer, String> SPELT_OUT = Map.ofEntries(
            Map.entry((int) 'ß', "ss"),
            Map.entry((int) 'æ', "ae"),
            Map.entry((int) 'œ', "oe"),
            Map.entry((int) 'ø', "o"),
            Map.entry((int) 'ł', "l"),
            Map.entry((int) 'đ', "d"),
            Map.entry((int) 'ð', "d"),
            Map.entry((int) 'þ', "th"),
            Map.entry((int) 'ı', "i"));

    private SearchWords() {}

    public static List<String> of(String text) {
        String plain = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
                .toLowerCase(Locale.ROOT);
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        plain.codePoints().filter(c -> !isMark(c)).forEach(c -> {
            if (!Character.isLetterOrDigit(c)) {
                end(word, words);
            } else if (word.length() < LONGEST_WORD) {
                word.append(SPELT_OUT.getOrDefault(c, Character.toString(c)));
            }
        });
        end(word, words);
        return words.stream().limit(MOST_WORDS).toList();
    }

    private static void end(StringBuilder word, List<String> words) {
        if (!word.isEmpty()) {
            words.add(word.toString());
            word.setLength(0);
        }
    }

    private static boolean isMark(int c) {
        int type = Character.getType(c);
        return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
    }
}
