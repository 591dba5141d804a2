package campcloth.fibre.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Cuts a label text into words, numbers and signs. Every character goes into a token or is white space; one that is neither a
 * letter, an ASCII digit nor a sign known here refuses the text, so that nothing is skipped. Runs once over the text, in time
 * proportional to its length.
 */
final class Tokens {

    private static final String SIGNS = "%/,;:+&-.*()\n";
    private static final String[] LOOK_ALIKES = {
        "%\uFF05",
        "/\u2044\u2215",
        "-\u2010\u2011\u2012\u2013\u2014\u2212",
        "*\u2022\u00B7\u25AA\u25CF\u25E6",
        "([",
        ")]",
        ";|",
        ":=",
        "\n\r\u2028\u2029"
    };
    private static final int MOST_DIGITS = 3;

    private final String text;
    private final List<Token> tokens = new ArrayList<>();

    private Tokens(String text) {
        this.text = text;
    }

    static List<Token> of(String text) {
        Tokens tokens = new Tokens(text);
        int at = 0;
        while (at < text.length()) {
            at = tokens.next(at);
        }
        return List.copyOf(tokens.tokens);
    }

    private int next(int at) {
        int c = text.codePointAt(at);
        String sign = sign(c);
        if (Character.isLetter(c)) {
            return word(at);
        }
        if (isDigit(at) || startsFraction(at)) {
            return number(at);
        }
        if (!sign.isEmpty()) {
            return sign(at, sign);
        }
        if (c == '\t' || Character.isSpaceChar(c)) {
            return at + 1;
        }
        throw new Unreadable(
                at,
                at + Character.charCount(c),
                "the character " + Shown.character(c) + " has no meaning on a fibre-content label",
                "take it out, or write what it stands for in words");
    }

    private int word(int from) {
        int to = from;
        while (to < text.length()) {
            int c = text.codePointAt(to);
            boolean inWord = Character.isLetter(c)
                    || isMark(c)
                    || (isApostrophe(c) && to + 1 < text.length() && Character.isLetter(text.codePointAt(to + 1)));
            if (!inWord) {
                break;
            }
            to += Character.charCount(c);
        }
        return add(Token.Sort.WORD, from, to, text.substring(from, to));
    }

    /** Digits with at most one decimal point or comma; the comma counts as decimal only between digits. */
    private int number(int from) {
        int point = pastDigits(from);
        int to = point;
        if (isPoint(point) && isDigit(point + 1)) {
            to = pastDigits(point + 1);
        }
        if (point - from > MOST_DIGITS || to - point - 1 > MOST_DIGITS || (isPoint(to) && isDigit(to + 1))) {
            throw new Unreadable(
                    from,
                    to,
                    "'" + Shown.excerpt(text, from, to) + "' is no share",
                    "write a number such as 65 or 12.5");
        }
        String digits = text.substring(from, to).replace(',', '.');
        return add(Token.Sort.NUMBER, from, to, point == from ? "0" + digits : digits);
    }

    private int sign(int at, String sign) {
        if (sign.equals("-") && isDigit(at + 1) && !follows(at)) {
            throw new Unreadable(
                    at,
                    pastDigits(at + 1),
                    "a share cannot be negative",
                    "take the minus sign out, or put a space after a dash that only separates");
        }
        boolean secondHalfOfBreak = at > 0 && text.charAt(at) == '\n' && text.charAt(at - 1) == '\r';
        return secondHalfOfBreak ? at + 1 : add(Token.Sort.SIGN, at, at + 1, sign);
    }

    private int add(Token.Sort sort, int from, int to, String normal) {
        tokens.add(new Token(sort, from, to, normal));
        return to;
    }

    /** Whether something is written right before, so that a dash here joins and a point here ends. */
    private boolean follows(int at) {
        if (at == 0) {
            return false;
        }
        int before = text.codePointBefore(at);
        return Character.isLetterOrDigit(before) || isMark(before) || before == '%' || before == ')';
    }

    private boolean startsFraction(int at) {
        return text.charAt(at) == '.' && isDigit(at + 1) && !follows(at);
    }

    private int pastDigits(int at) {
        int to = at;
        while (isDigit(to)) {
            to++;
        }
        return to;
    }

    private boolean isDigit(int at) {
        return at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }

    private boolean isPoint(int at) {
        return at < text.length() && (text.charAt(at) == '.' || text.charAt(at) == ',');
    }

    private static boolean isMark(int c) {
        int type = Character.getType(c);
        return type == Character.NON_SPACING_MARK || type == Character.COMBINING_SPACING_MARK;
    }

    private static boolean isApostrophe(int c) {
        return c == '\'' || c == '\u2019';
    }

    private static String sign(int c) {
        for (String alike : LOOK_ALIKES) {
            if (alike.indexOf(c) >= 0) {
                return alike.substring(0, 1);
            }
        }
        return SIGNS.indexOf(c) >= 0 ? new String(Character.toChars(c)) : "";
    }

    /** Letters that do not come apart into a plain letter and an accent, as labels without them are printed. */
    private static String unadorned(int c) {
        return switch (c) {
            case '\u2019' -> "'";
            case '\u00DF' -> "ss";
            case '\u00E6' -> "ae";
            case '\u0153' -> "oe";
            case '\u00F8' -> "o";
            case '\u0142' -> "l";
            case '\u0111' -> "d";
            default -> Character.toString(c);
        };
    }

    /** Words as the vocabulary keys them: lower case, without accents, hyphens as spaces. */
    static String folded(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        if (lower.chars().allMatch(c -> c >= 'a' && c <= 'z')) {
            return lower;
        }
        String plain = java.text.Normalizer.normalize(lower, java.text.Normalizer.Form.NFD);
        StringBuilder folded = new StringBuilder(plain.length());
        plain.codePoints().filter(c -> !isMark(c)).forEach(c -> folded.append(unadorned(c)));
        return String.join(" ", folded.toString().replace('-', ' ').trim().split("\\s+"));
    }
}
