package campcloth.figure;

import java.util.ArrayList;
import java.util.List;

/** About how wide words are in a plain sans-serif face, on the broad side; and words broken into lines. */
public final class TextWidth {

    private static final double NARROW = 0.36;
    private static final double USUAL = 0.6;
    private static final double WIDE = 0.9;
    private static final double FULL = 1.1;
    private static final int FIRST_FULL = 0x2000;

    private TextWidth() {}

    public static double of(String words, double size) {
        return size * words.codePoints().mapToDouble(TextWidth::share).sum();
    }

    private static double share(int character) {
        if (character >= FIRST_FULL) {
            return FULL;
        }
        if (" .,:;|'()ijl".indexOf(character) >= 0) {
            return NARROW;
        }
        return character == 'm' || character == 'w' || Character.isUpperCase(character) ? WIDE : USUAL;
    }

    /** The words, cut with an ellipsis where they are wider. */
    public static String shortened(String words, double size, double width) {
        StringBuilder kept = new StringBuilder();
        double room = width - FULL * size;
        double used = 0;
        for (int i = 0; i < words.length(); i = words.offsetByCodePoints(i, 1)) {
            used += size * share(words.codePointAt(i));
            if (used <= room) {
                kept.appendCodePoint(words.codePointAt(i));
            } else if (used > width) {
                return kept + "\u2026";
            }
        }
        return words;
    }

    /** Words in lines no wider than stated, broken at spaces where that is possible. */
    public static List<String> lines(String words, double size, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ")) {
            String tried = line.isEmpty() ? word : line + " " + word;
            if (of(tried, size) <= width) {
                line = new StringBuilder(tried);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
            }
            line = new StringBuilder(brokenInto(lines, word, size, width));
        }
        lines.add(line.toString());
        return lines;
    }

    /** Adds the full lines of a word too long for one, gives what is left of it. */
    private static String brokenInto(List<String> lines, String word, double size, double width) {
        StringBuilder rest = new StringBuilder();
        for (int character : word.codePoints().toArray()) {
            if (!rest.isEmpty() && of(rest + Character.toString(character), size) > width) {
                lines.add(rest.toString());
                rest.setLength(0);
            }
            rest.appendCodePoint(character);
        }
        return rest.toString();
    }
}
