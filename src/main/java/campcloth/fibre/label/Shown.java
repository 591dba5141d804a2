package campcloth.fibre.label;

/** Label text as it can be shown back: short, and with invisible characters written out. */
public final class Shown {

    private static final int MOST_CHARACTERS = 60;

    private Shown() {}

    /** The characters from..to, shortened at the end where they are many. */
    public static String excerpt(String text, int from, int to) {
        StringBuilder shown = new StringBuilder();
        int at = from;
        while (at < to && shown.length() < MOST_CHARACTERS) {
            int c = text.codePointAt(at);
            shown.append(c == '\n' || c == '\r' || c == '\t' ? " " : isVisible(c) ? Character.toString(c) : code(c));
            at += Character.charCount(c);
        }
        return at < to ? shown + "\u2026" : shown.toString();
    }

    /** The character in quotes, or its number where it cannot be seen. */
    static String character(int c) {
        return isVisible(c) ? "'" + Character.toString(c) + "'" : code(c) + ", which cannot be seen,";
    }

    private static String code(int c) {
        return String.format(java.util.Locale.ROOT, "U+%04X", c);
    }

    private static boolean isVisible(int c) {
        int type = Character.getType(c);
        return !Character.isISOControl(c)
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.UNASSIGNED
                && type != Character.PRIVATE_USE
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR;
    }
}
