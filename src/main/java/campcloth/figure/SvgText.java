package campcloth.figure;

/** Text made fit for XML 1.0: marks escaped, characters that XML does not allow or that steer the output left out. */
public final class SvgText {

    private SvgText() {}

    public static String of(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().filter(SvgText::isPrintable).forEach(character -> {
            switch (character) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.appendCodePoint(character);
            }
        });
        return escaped.toString();
    }

    private static boolean isPrintable(int character) {
        boolean steers = Character.isISOControl(character)
                || Character.getType(character) == Character.FORMAT
                || Character.getType(character) == Character.LINE_SEPARATOR
                || Character.getType(character) == Character.PARAGRAPH_SEPARATOR;
        boolean noCharacter = Character.getType(character) == Character.SURROGATE || (character & 0xFFFE) == 0xFFFE;
        return !steers && !noCharacter;
    }
}
