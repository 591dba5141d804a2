package campcloth.fibre.label;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A place that was printed or recognised badly, and what it was meant to be.
 *
 * @param from first character
 * @param to character after the last
 * @param meant all that it may have been meant to be
 */
record Slip(int from, int to, Set<String> meant) {

    Slip {
        meant = new LinkedHashSet<>(meant);
    }

    String meaning() {
        return meant.iterator().next();
    }

    String note(String text) {
        return "read '" + Shown.excerpt(text, from, to) + "' as '" + meaning() + "'";
    }

    boolean overlaps(Slip other) {
        return from < other.to && other.from < to;
    }

    /** The text as it was meant; slips in the order of the text, each with one meaning. */
    static String mended(String text, Collection<Slip> slips) {
        StringBuilder mended = new StringBuilder(text.length() + 8);
        int at = 0;
        for (Slip slip : slips) {
            mended.append(text, at, slip.from).append(slip.meaning());
            at = slip.to;
        }
        return mended.append(text, at, text.length()).toString();
    }

    Unreadable unclear(String text) {
        List<String> readings = List.copyOf(meant);
        return new Unreadable(
                from,
                to,
                "'" + Shown.excerpt(text, from, to) + "' is badly printed and has more than one reading: "
                        + String.join("; ", readings),
                "write it as the label has it",
                readings);
    }
}
