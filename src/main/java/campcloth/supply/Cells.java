package campcloth.supply;

import campcloth.figure.Refused;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands in one cell of a row: its guard against formulas taken off. A spreadsheet runs what begins with one of
 * {@code = + - @}, a tab or a break of the line (the list of OWASP on CSV injection, with their full-width forms); a cell that
 * begins so is written with an apostrophe in front, one more where there is one already, and read without it.
 */
final class Cells {

    /** What stands for bytes that are no UTF-8. */
    static final char UNDECODABLE = '\ufffd';

    private static final String STARTERS = "[=+\\-@\t\r\n\uff1d\uff0b\uff0d\uff20]";
    private static final Pattern DANGEROUS = Pattern.compile("'*" + STARTERS + ".*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final int LONGEST = 8000;

    private Cells() {}

    /** The text so that no spreadsheet runs it; a negative number stays one. */
    static String guarded(String text) {
        return DANGEROUS.matcher(text).matches() && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }

    /** The text as it was before it was guarded. */
    static String unguarded(String cell) {
        Matcher guarded = DANGEROUS.matcher(cell);
        return cell.startsWith("'") && guarded.matches() ? cell.substring(1) : cell;
    }

    /** The text of a cell, empty where it holds none; refuses what can be no text. */
    static Optional<String> text(List<String> row, HeadReader.Found column) {
        String cell = row.get(column.at());
        String field = column.column().field();
        if (cell.indexOf(UNDECODABLE) >= 0) {
            throw Refused.of(field, "holds bytes that are no UTF-8", "save the list as UTF-8");
        }
        if (cell.indexOf('\0') >= 0) {
            throw Refused.of(field, "holds a character that is no text (U+0000)", "take it out");
        }
        if (cell.length() > LONGEST) {
            throw Refused.of(field, "has " + cell.length() + " characters", "keep a cell to " + LONGEST);
        }
        String text = unguarded(cell);
        return text.isBlank() ? Optional.empty() : Optional.of(column.column() == Column.NOTE ? text : text.strip());
    }
}
