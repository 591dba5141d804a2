package campcloth.fibre.label;

import campcloth.fibre.LabelReading;
import java.util.List;
import java.util.Set;

/** A label text read whole, by the strict rules. */
public final class LabelGrammar {

    private LabelGrammar() {}

    /**
     * The parts that the label names, in its order. Where the text cannot be read as it stands, slips of print are mended, as far
     * as each has one reading and the text can then be read by the same rules; otherwise the first refusal holds.
     *
     * @param spoken keys of the languages of the text where they are known, else none
     * @param notes receives what else a reader should know
     * @throws Unreadable where any of it cannot be read safely
     */
    public static List<LabelReading.Part> parts(String text, Lexicon lexicon, Set<String> spoken, Set<String> notes) {
        String plain = Widths.usual(text);
        Reading reading;
        try {
            reading = asItStands(plain, lexicon, spoken);
        } catch (Unreadable refusal) {
            reading = mended(plain, lexicon, spoken, refusal, notes);
        }
        notes.addAll(reading.notes());
        return reading.parts();
    }

    private static Reading asItStands(String text, Lexicon lexicon, Set<String> spoken) {
        List<Spot> spots = Spots.of(Tokens.of(text), lexicon);
        return spots.stream().anyMatch(s -> s.mayBe(WordKind.LANGUAGE))
                ? LanguageMarks.read(text, spots, spoken)
                : Choices.read(text, spots, spoken);
    }

    private static Reading mended(
            String text, Lexicon lexicon, Set<String> spoken, Unreadable refusal, Set<String> notes) {
        List<Slip> slips = Slips.in(text, lexicon);
        if (slips.isEmpty()) {
            throw refusal;
        }
        for (Slip slip : slips) {
            if (slip.meant().size() > 1) {
                throw slip.unclear(text);
            }
        }
        try {
            Reading reading = asItStands(Slip.mended(text, slips), lexicon, spoken);
            slips.forEach(slip -> notes.add(slip.note(text)));
            return reading;
        } catch (Unreadable stillUnreadable) {
            throw refusal;
        }
    }
}
