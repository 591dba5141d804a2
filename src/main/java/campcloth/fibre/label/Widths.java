package campcloth.fibre.label;

/** Characters in the full width of East Asian type, written in the usual width; they are the same characters. */
final class Widths {

    private static final char FIRST = '\uFF01';
    private static final char LAST = '\uFF5E';
    private static final int APART = FIRST - '!';

    private Widths() {}

    /** The text, of the same length. */
    static String usual(String text) {
        StringBuilder usual = new StringBuilder(text);
        for (int i = 0; i < usual.length(); i++) {
            char c = usual.charAt(i);
            if (c >= FIRST && c <= LAST) {
                usual.setCharAt(i, (char) (c - APART));
            }
        }
        return usual.toString();
    }
}
