package campcloth.pages;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Sentences of the core as people read them at a table. For programs some name the option behind a remedy, as in {@code (option
 * seamAllowanceCm 1.6)}; the words before it say the same, so on a page the name goes.
 */
public final class ForMakers {

    private static final String NAMED = "[a-z][A-Za-z]*(?: (?:[0-9.]+|true|false))?";
    private static final Pattern OPTION = Pattern.compile(" \\(options? " + NAMED + "(?:(?:,| and) " + NAMED + ")*\\)");

    private ForMakers() {}

    public static String words(String sentence) {
        return OPTION.matcher(sentence).replaceAll("");
    }

    public static List<String> words(List<String> sentences) {
        return sentences.stream().map(ForMakers::words).toList();
    }
}
