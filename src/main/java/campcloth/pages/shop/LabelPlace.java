package campcloth.pages.shop;

import campcloth.fibre.LabelReading;
import campcloth.figure.Words;
import java.util.List;

/**
 * The place where a label could not be read, between what stands before and behind it.
 *
 * @param before text before it, cut where it is long
 * @param at the place itself, cut where it is long
 * @param behind text behind it, cut where it is long
 * @param notRead why, and what would help
 * @param meant labels with each reading of the place written out
 */
public record LabelPlace(String before, String at, String behind, LabelReading.NotRead notRead, List<String> meant) {

    private static final int AROUND = 120;
    private static final int MOST_READINGS = 8;

    static LabelPlace of(String text, LabelReading.NotRead notRead) {
        String before = text.substring(0, notRead.from());
        String behind = text.substring(notRead.to());
        String at = text.substring(notRead.from(), notRead.to());
        return new LabelPlace(
                before.length() > AROUND ? "…" + before.substring(Words.cut(before, before.length() - AROUND)) : before,
                shortened(at),
                shortened(behind),
                notRead,
                notRead.readings().stream()
                        .limit(MOST_READINGS)
                        .map(reading -> before + reading + behind)
                        .toList());
    }

    private static String shortened(String text) {
        return text.length() > AROUND ? text.substring(0, Words.cut(text, AROUND)) + "…" : text;
    }
}
