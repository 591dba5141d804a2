package campcloth.supply;

import campcloth.figure.Refusal;
import java.util.List;

/**
 * What came of a list.
 *
 * @param head what its head was understood as
 * @param written whether anything was written, or was found as it should be; false where it was only looked at or refused
 * @param counts how many rows came to what; for a list that was not written, what they would have come to
 * @param rows the first {@value #MOST_ROWS} rows: those refused before the others, those with a note next, in the order of the
 *     list
 */
public record ListReport(ListHead head, boolean written, Counts counts, List<Row> rows) {

    /** Most rows in one report. */
    public static final int MOST_ROWS = 1000;

    public ListReport {
        rows = List.copyOf(rows);
    }

    /** What came of a row. */
    public enum Outcome {
        ADDED,
        CHANGED,
        UNCHANGED,
        REFUSED
    }

    /** Numbers of rows; the four outcomes add up to the rows. */
    public record Counts(long rows, long added, long changed, long unchanged, long refused) {}

    /** A row and what came of it. */
    public record Row(long line, String key, Outcome outcome, List<Refusal> errors, List<String> notes) {

        public Row {
            errors = List.copyOf(errors);
            notes = List.copyOf(notes);
        }
    }
}
