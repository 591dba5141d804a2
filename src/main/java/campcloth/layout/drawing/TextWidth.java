package campcloth.layout.drawing;

import java.util.ArrayList;
import java.util.List;

/** About how wide words are in a plain sans-serif face, on the broad side; and words broken into lines. */
final class TextWidth {

    private static final double NARROW = 0.36;
    private static final double USUAL = 0.6;
    private static final double WIDE = 0.9;
    private static final double FULL = 1.1;
    private static final int FIRST_FULL = 0x2000;

    private TextWidth() {}

    static double mm(String words, double sizeMm) {
        return sizeMm * words.codePoints().mapToDouble(TextWidth::share).sum();
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

    /** Words in lines no wider than stated, broken at spaces where that is possible. */
    static List<String> lines(String words, double sizeMm, double widthMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : words.split(" ")) {
            String tried = line.isEmpty() ? word : line + " " + word;
            if (mm(tried, sizeMm) <= widthMm) {
                line = new StringBuilder(tried);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
            }
            line = new StringBuilder(brokenInto(lines, word, sizeMm, widthMm));
        }
        lines.add(line.toString());
        return lines;
    }

    /** Adds the full lines of a word too long for one, gives what is left of it. */
    private static String brokenInto(List<String> lines, String word, double sizeMm, double widthMm) {
        StringBuilder rest = new StringBuilder();
        for (int character : word.codePoints().toArray()) {
            if (!rest.isEmpty() && mm(rest + Character.toString(character), sizeMm) > widthMm) {
                lines.add(rest.toString());
                rest.setLength(0);
            }
            rest.appendCodePoint(character);
        }
        return rest.toString();
    }
}
