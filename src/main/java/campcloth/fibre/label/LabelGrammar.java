package campcloth.fibre.label;

import campcloth.fibre.LabelReading;
import java.util.List;
import java.util.Set;

/** A label text read whole, by the strict rules. */
public final class LabelGrammar {

    private LabelGrammar() {}

    /**
     * The parts that the label names, in its order.
     *
     * @param spoken keys of the languages of the text where they are known, else none
     * @param notes receives what else a reader should know
     * @throws Unreadable where any of it cannot be read safely
     */
    public static List<LabelReading.Part> parts(String text, Lexicon lexicon, Set<String> spoken, Set<String> notes) {
        Reading reading = read(text, lexicon, spoken);
        notes.addAll(reading.notes());
        return reading.parts();
    }

    static Reading read(String text, Lexicon lexicon, Set<String> spoken) {
        List<Spot> spots = Spots.of(Tokens.of(text), lexicon);
        return spots.stream().anyMatch(s -> s.mayBe(WordKind.LANGUAGE))
                ? LanguageMarks.read(text, spots, spoken)
                : Choices.read(text, spots, spoken);
    }
}
